package org.glintery.records;

import java.util.Optional;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;
import org.glintery.api.PlainText;
import org.glintery.api.kinds.DocumentKinds;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.DocumentType;
import org.openide.util.NbBundle.Messages;

/**
 * Whether a document is named as documents are and fits the record of its kind. What documents of add-ons, and newer ones,
 * hold is taken as it is.
 */
@Messages({
    "# {0} - owner",
    "# {1} - type",
    "document-misnamed=''{0}'' and ''{1}'' are not both words of letters and digits",
    "# {0} - the version it says",
    "document-version=it says version {0}, and versions begin with 1"
})
final class DocumentFit {
    private final JacksonCodec codec;

    DocumentFit(JacksonCodec codec) {
        this.codec = codec;
    }

    /** What is wrong with it; empty when it fits, as far as anyone can tell here. */
    Optional<String> problem(DocRef ref, int version, Json.Obj body) {
        if (!ref.isWellNamed()) {
            return Optional.of(Bundle.document_misnamed(PlainText.line(ref.owner()), PlainText.line(ref.type())));
        }
        if (version < 1) {
            return Optional.of(Bundle.document_version(String.valueOf(version)));
        }
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
