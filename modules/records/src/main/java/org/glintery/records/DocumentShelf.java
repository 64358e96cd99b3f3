package org.glintery.records;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.glintery.api.MalformedException;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.Stored;
import org.pcollections.HashPMap;
import org.pcollections.HashTreePMap;
import org.pcollections.IntTreePMap;

/** The documents of one kind. Immutable but for the lists it remembers; any thread. */
final class DocumentShelf {
    private static final Logger LOG = Logger.getLogger(DocumentShelf.class.getName());
    static final DocumentShelf EMPTY = new DocumentShelf(HashTreePMap.empty(), IntTreePMap.empty());

    private final HashPMap<UUID, Document> byId;
    private final IntTreePMap<Document> inOrder;
    private final Map<ListKey, List<?>> lists = new ConcurrentHashMap<>(2);

    private record ListKey(Class<?> record, int version) {}

    private DocumentShelf(HashPMap<UUID, Document> byId, IntTreePMap<Document> inOrder) {
        this.byId = byId;
        this.inOrder = inOrder;
    }

    /** The document or the trace of a removed one; null when there never was one. */
    Document get(UUID id) {
        return byId.get(id);
    }

    DocumentShelf with(Document document) {
        return new DocumentShelf(
                byId.plus(document.ref().id(), document),
                document.present()
                        ? inOrder.plus(document.number(), document)
                        : inOrder.minus((Object) document.number()));
    }

    /** Those present, in the order they were first put. */
    Iterable<Document> inOrder() {
        return inOrder.values();
    }

    int size() {
        return inOrder.size();
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
        var all = new ArrayList<Stored<T>>(size());
        for (Document document : inOrder()) {
            try {
                all.add(document.as(type, codec));
            } catch (MalformedException e) {
                LOG.log(Level.WARNING, "left out of its list: " + document.ref(), e);
            }
        }
        return List.copyOf(all);
    }
}
