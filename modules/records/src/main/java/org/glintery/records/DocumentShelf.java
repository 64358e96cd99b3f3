package org.glintery.records;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.glintery.api.MalformedException;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.Stored;
import org.pcollections.HashPMap;
import org.pcollections.HashTreePMap;
import org.pcollections.IntTreePMap;

/**
 * The documents of one kind: those that were there when the workshop was opened, in plain collections that are made
 * quickly and never change, and over them what changed since, in persistent ones. Immutable but for the lists it
 * remembers; any thread.
 */
final class DocumentShelf {
    private static final Logger LOG = Logger.getLogger(DocumentShelf.class.getName());
    static final DocumentShelf EMPTY = opened(List.of());

    private final Map<UUID, Document> opened;
    private final List<Document> openedInOrder;
    private final HashPMap<UUID, Document> changed;
    private final IntTreePMap<Document> added;
    private final int size;
    private final Map<ListKey, List<?>> lists = new ConcurrentHashMap<>(2);

    private record ListKey(Class<?> record, int version) {}

    private DocumentShelf(
            Map<UUID, Document> opened,
            List<Document> openedInOrder,
            HashPMap<UUID, Document> changed,
            IntTreePMap<Document> added,
            int size) {
        this.opened = opened;
        this.openedInOrder = openedInOrder;
        this.changed = changed;
        this.added = added;
        this.size = size;
    }

    /** What is there at opening, removed ones too, in the order of their numbers. */
    static DocumentShelf opened(Collection<Document> documents) {
        Map<UUID, Document> byId = new HashMap<>(documents.size() * 4 / 3 + 1);
        documents.forEach(document -> byId.put(document.ref().id(), document));
        int present = (int) documents.stream().filter(Document::present).count();
        return new DocumentShelf(byId, List.copyOf(documents), HashTreePMap.empty(), IntTreePMap.empty(), present);
    }

    /** The document or the trace of a removed one; null when there never was one. */
    Document get(UUID id) {
        Document newer = changed.get(id);
        return newer == null ? opened.get(id) : newer;
    }

    DocumentShelf with(Document document) {
        UUID id = document.ref().id();
        Document before = get(id);
        int more = (document.present() ? 1 : 0) - (before != null && before.present() ? 1 : 0);
        return new DocumentShelf(
                opened,
                openedInOrder,
                changed.plus(id, document),
                opened.containsKey(id) ? added : added.plus(document.number(), document),
                size + more);
    }

    /** Those present, in the order they were first put: whoever was added since has a higher number. */
    Stream<Document> inOrder() {
        Stream<Document> old = changed.isEmpty()
                ? openedInOrder.stream()
                : openedInOrder.stream()
                        .map(document -> Objects.requireNonNullElse(
                                changed.get(document.ref().id()), document));
        return Stream.concat(old, added.values().stream()).filter(Document::present);
    }

    int size() {
        return size;
    }

    /** All that fit the record; one that does not is reported and left out, so that it can't hide the rest. */
    @SuppressWarnings("unchecked")
    <T extends Record> List<Stored<T>> all(DocumentType<T> type, JacksonCodec codec) {
        var key = new ListKey(type.record(), type.version());
        List<?> known = lists.get(key);
        if (known == null) {
            known = decodeAll(type, codec);
            lists.put(key, known);
        }
        return (List<Stored<T>>) known;
    }

    private <T extends Record> List<Stored<T>> decodeAll(DocumentType<T> type, JacksonCodec codec) {
        List<Document> documents = new ArrayList<>(size);
        inOrder().forEach(documents::add);
        return documents.parallelStream()
                .map(document -> decoded(document, type, codec))
                .flatMap(Optional::stream)
                .toList();
    }

    private static <T extends Record> Optional<Stored<T>> decoded(
            Document document, DocumentType<T> type, JacksonCodec codec) {
        try {
            return Optional.of(document.as(type, codec));
        } catch (MalformedException e) {
            LOG.log(Level.WARNING, "left out of its list: " + document.ref(), e);
            return Optional.empty();
        }
    }
}
