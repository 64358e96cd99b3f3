package org.glintery.testkit;

import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.glintery.api.Json;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.Stored;

/** Documents as JSON, in the order they were first put; removed ones stay as traces that go on counting. Immutable. */
final class MemoryDocuments {
    static final MemoryDocuments NONE = new MemoryDocuments(Map.of());
    private static final int MOST_BYTES = 1 << 20;
    private static final PlainCodec CODEC = new PlainCodec();

    private final Map<DocRef, Kept> byRef;

    /** @param body null when it was removed */
    record Kept(DocRef ref, int typeVersion, int version, Json.Obj body) {

        boolean present() {
            return body != null;
        }

        <T extends Record> Stored<T> as(DocumentType<T> type) {
            boolean newer = typeVersion > type.version();
            return new Stored<>(ref.id(), version, CODEC.fromJson(raised(type), type.record()), newer);
        }

        private Json.Obj raised(DocumentType<?> type) {
            Json.Obj raised = body;
            for (int from = Math.max(1, typeVersion); from < type.version(); from++) {
                raised = type.upcasters().get(from - 1).apply(raised);
            }
            return raised;
        }
    }

    private MemoryDocuments(Map<DocRef, Kept> byRef) {
        this.byRef = byRef;
    }

    Optional<Kept> find(DocRef ref) {
        return Optional.ofNullable(byRef.get(ref)).filter(Kept::present);
    }

    /** In the order they were first put. */
    Stream<Kept> present() {
        return byRef.values().stream().filter(Kept::present);
    }

    Stream<Kept> byKey() {
        return present()
                .sorted(Comparator.comparing((Kept kept) -> kept.ref().owner())
                        .thenComparing(kept -> kept.ref().type())
                        .thenComparing(kept -> kept.ref().id().toString()));
    }

    /** Puts a record in place of what stands, whose fields that the record does not know are kept. */
    <T extends Record> MemoryDocuments with(DocumentType<T> type, DocRef ref, T value) throws RefusedException {
        Json.Obj body = (Json.Obj) CODEC.toJson(value);
        Optional<Kept> old = find(ref);
        if (old.isPresent() && old.get().typeVersion() <= type.version()) {
            body = UnknownFields.keep(old.get().raised(type), body, type.record());
        }
        return with(ref, type.version(), body);
    }

    MemoryDocuments with(DocRef ref, int typeVersion, Json.Obj body) throws RefusedException {
        if (find(ref).filter(old -> old.typeVersion() > typeVersion).isPresent()) {
            throw new RefusedException("newer");
        }
        if (CODEC.compact(body).getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
            throw new RefusedException("too-large");
        }
        return set(ref, typeVersion, body);
    }

    MemoryDocuments without(DocRef ref) {
        return find(ref).map(old -> set(ref, old.typeVersion(), null)).orElse(this);
    }

    /** These documents with the contents that others have; versions go on counting. */
    MemoryDocuments withContentsOf(MemoryDocuments others) {
        MemoryDocuments changed = this;
        for (Kept now : byRef.values()) {
            Kept then = others.byRef.get(now.ref());
            Json.Obj body = then == null ? null : then.body();
            if (now.body() == null ? body != null : !now.body().equals(body)) {
                changed = changed.set(now.ref(), then == null ? now.typeVersion() : then.typeVersion(), body);
            }
        }
        return changed;
    }

    /** The keys of what is not the same there. */
    Set<DocRef> differing(MemoryDocuments others) {
        return byRef.values().stream()
                .filter(kept -> !kept.equals(others.byRef.get(kept.ref())))
                .map(Kept::ref)
                .collect(Collectors.toSet());
    }

    private MemoryDocuments set(DocRef ref, int typeVersion, Json.Obj body) {
        Map<DocRef, Kept> more = new LinkedHashMap<>(byRef);
        Kept before = byRef.get(ref);
        more.put(ref, new Kept(ref, typeVersion, before == null ? 1 : before.version() + 1, body));
        return new MemoryDocuments(more);
    }
}
