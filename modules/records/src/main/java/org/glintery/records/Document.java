package org.glintery.records;

import java.util.Objects;
import java.util.Optional;
import org.glintery.api.Json;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.RawDocument;
import org.glintery.api.workshop.Stored;

/**
 * One document as it is kept. Its record is made when first asked for and remembered. A removed document
 * stays as a trace without a body, so that its versions go on counting and its place in the order stays.
 * Immutable but for what it remembers; any thread.
 */
final class Document {
    private final int number;
    private final DocRef ref;
    private final int typeVersion;
    private final int version;
    private final byte[] packed;
    private volatile Decoded decoded;

    private record Decoded(Class<?> type, int version, Stored<?> stored) {}

    /** @param packed null when the document is removed */
    Document(int number, DocRef ref, int typeVersion, int version, byte[] packed) {
        this.number = number;
        this.ref = Objects.requireNonNull(ref);
        this.typeVersion = typeVersion;
        this.version = version;
        this.packed = packed;
    }

    int number() {
        return number;
    }

    DocRef ref() {
        return ref;
    }

    int typeVersion() {
        return typeVersion;
    }

    /** The times it was put, removals counted too. */
    int version() {
        return version;
    }

    boolean present() {
        return packed != null;
    }

    /** The packed body; null when removed. Not to be changed. */
    byte[] packed() {
        return packed;
    }

    /** The hash of the body; empty when removed. */
    Optional<byte[]> hash() {
        return present() ? Optional.of(PackedBody.hash(packed)) : Optional.empty();
    }

    Json.Obj body(JacksonCodec codec) {
        return codec.object(PackedBody.unpack(packed));
    }

    RawDocument raw(JacksonCodec codec) {
        return new RawDocument(ref, typeVersion, body(codec));
    }

    /** @throws org.glintery.api.MalformedException when the body does not fit the record */
    <T extends Record> Stored<T> as(DocumentType<T> type, JacksonCodec codec) {
        Decoded known = decoded;
        if (known == null || known.type != type.record() || known.version != type.version()) {
            known = new Decoded(type.record(), type.version(), decode(type, codec));
            decoded = known;
        }
        @SuppressWarnings("unchecked")
        Stored<T> stored = (Stored<T>) known.stored;
        return stored;
    }

    private <T extends Record> Stored<T> decode(DocumentType<T> type, JacksonCodec codec) {
        T value = typeVersion < type.version()
                ? codec.fromJson(Upcasting.raise(body(codec), typeVersion, type), type.record())
                : codec.decode(PackedBody.unpack(packed), type.record());
        return new Stored<>(ref.id(), version, value, typeVersion > type.version());
    }
}
