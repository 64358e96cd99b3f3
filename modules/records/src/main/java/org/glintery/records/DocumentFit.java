package org.glintery.records;

import java.util.Optional;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;
import org.glintery.api.kinds.DocumentKinds;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.DocumentType;

/** Whether a document fits the record of its kind. Documents of add-ons, and newer ones, are taken as they are. */
final class DocumentFit {
    private final JacksonCodec codec;

    DocumentFit(JacksonCodec codec) {
        this.codec = codec;
    }

    /** What is wrong with it; empty when it fits, as far as anyone can tell here. */
    Optional<String> problem(DocRef ref, int version, Json.Obj body) {
        return DocumentKinds.of(ref)
                .filter(type -> version <= type.version())
                .flatMap(type -> problem(type, version, body));
    }

    private Optional<String> problem(DocumentType<?> type, int version, Json.Obj body) {
        try {
            Json.Obj now = version < type.version() ? Upcasting.raise(body, version, type) : body;
            codec.fromJson(now, type.record());
            return Optional.empty();
        } catch (MalformedException e) {
            return Optional.of(e.getMessage());
        }
    }
}
