package org.glintery.records;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.glintery.api.workshop.DocRef;
import org.pcollections.HashPMap;
import org.pcollections.HashTreePMap;

/** All documents at one revision. Immutable; any thread. */
record Documents(HashPMap<DocumentKind, DocumentShelf> shelves, int nextNumber) {
    static final Documents NONE = new Documents(HashTreePMap.empty(), 1);

    /** What is there at opening, removed ones too, in the order of their numbers. */
    static Documents opened(List<Document> documents) {
        Map<DocumentKind, List<Document>> kinds = new LinkedHashMap<>();
        documents.forEach(document -> kinds.computeIfAbsent(DocumentKind.of(document.ref()), kind -> new ArrayList<>())
                .add(document));
        HashPMap<DocumentKind, DocumentShelf> shelves = HashTreePMap.empty();
        for (Map.Entry<DocumentKind, List<Document>> kind : kinds.entrySet()) {
            shelves = shelves.plus(kind.getKey(), DocumentShelf.opened(kind.getValue()));
        }
        int last = documents.isEmpty() ? 0 : documents.get(documents.size() - 1).number();
        return new Documents(shelves, last + 1);
    }

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
        return shelves.values().stream().flatMap(DocumentShelf::inOrder);
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
