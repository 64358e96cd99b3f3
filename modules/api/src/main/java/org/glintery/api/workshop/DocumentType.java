package org.glintery.api.workshop;

import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.glintery.api.Json;
import org.glintery.api.Stable;

/**
 * A kind of document: who owns it, its name, its version and the record it maps to. Documents are at most
 * 1 MiB of JSON. Unknown fields are kept when a document is put again; a document of a newer version than
 * this type's is read-only.
 *
 * @param owner a word of letters and digits, parted by single points, hyphens or low lines; so is the name
 * @param upcasters element {@code i} turns a body of version {@code i + 1} into one of version {@code i + 2}
 */
@Stable
public record DocumentType<T extends Record>(
        String owner, String name, int version, Class<T> record, List<UnaryOperator<Json.Obj>> upcasters) {

    public DocumentType {
        upcasters = List.copyOf(upcasters);
        if (!DocRef.isWord(owner) || !DocRef.isWord(name)) {
            throw new IllegalArgumentException("owner and name are words: " + owner + ", " + name);
        }
        if (upcasters.size() != version - 1) {
            throw new IllegalArgumentException("version " + version + " needs " + (version - 1) + " upcasters");
        }
    }

    /** A kind in its first version. */
    public static <T extends Record> DocumentType<T> of(String owner, String name, Class<T> record) {
        return new DocumentType<>(owner, name, 1, record, List.of());
    }

    public DocRef ref(UUID id) {
        return new DocRef(owner, name, id);
    }
}
