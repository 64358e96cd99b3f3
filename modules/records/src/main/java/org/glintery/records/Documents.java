package org.glintery.records;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.glintery.api.workshop.DocRef;
import org.pcollections.HashPMap;
import org.pcollections.HashTreePMap;

/** All documents at one revision. Immutable; any thread. */
record Documents(HashPMap<DocumentKind, DocumentShelf> shelves, int nextNumber) {
    static final Documents NONE = new Documents(HashTreePMap.empty(), 1);

    DocumentShelf shelf(DocumentKind kind) {
        return shelves.getOrDefault(kind, DocumentShelf.EMPTY);
    }

    /** The document or the trace of a removed one. */
    Optional<Document> trace(DocRef ref) {
        return Optional.ofNullable(shelf(DocumentKind.of(ref)).get(ref.id()));
    }

    Optional<Document> find(DocRef ref) {
        return trace(ref).filter(Document::present);
    }

    /** With a document put, replaced or removed. */
    Documents with(Document document) {
        var kind = DocumentKind.of(document.ref());
        return new Documents(
                shelves.plus(kind, shelf(kind).with(document)), Math.max(nextNumber, document.number() + 1));
    }

    long count() {
        return shelves.values().stream().mapToLong(DocumentShelf::size).sum();
    }

    Stream<Document> present() {
        return shelves.values().stream()
                .flatMap(shelf -> StreamSupport.stream(shelf.inOrder().spliterator(), false));
    }

    Stream<Document> byKey() {
        return present()
                .sorted(Comparator.comparing(
                                (Document document) -> document.ref().owner())
                        .thenComparing(document -> document.ref().type())
                        .thenComparing(document -> document.ref().id().toString()));
    }

    /** In the order they were first put, whatever their kind. */
    Stream<Document> byNumber() {
        return present().sorted(Comparator.comparingInt(Document::number));
    }
}
