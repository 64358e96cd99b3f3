package org.glintery.records;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;
import org.glintery.api.PlainText;
import org.glintery.api.kinds.DocumentKinds;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.workshop.DocRef;
import org.openide.util.NbBundle.Messages;

/** Reads the documents and movements of one import, each of which may be there once. Not safe for use by several threads. */
@Messages({
    "# {0} - field",
    "item-field-missing=''{0}'' is missing",
    "# {0} - what was written",
    "# {1} - kind of document",
    "document-id=''{0}'' can''t be the id of a document of the kind {1}",
    "# {0} - document",
    "document-no-version=the typeVersion of the document {0} is not a whole number",
    "# {0} - document",
    "document-bodiless=the document {0} has no body",
    "# {0} - document",
    "document-twice=the document {0} is there twice",
    "# {0} - document",
    "# {1} - problem",
    "document-unfit=the document {0} does not fit: {1}",
    "# {0} - id",
    "movement-twice=the movement {0} is there twice"
})
final class IncomingItems {
    private final JacksonCodec codec;
    private final DocumentFit fit;
    private final Set<DocRef> documents = new HashSet<>();
    private final Set<UUID> movements = new HashSet<>();

    IncomingItems(JacksonCodec codec) {
        this.codec = codec;
        this.fit = new DocumentFit(codec);
    }

    /**
     * What does not fit its record would be seen nowhere and break whoever asks for it.
     *
     * @throws MalformedException that names the document
     */
    PreparedChange.Step document(Json.Obj item) {
        DocRef ref = ref(text(item, "owner"), text(item, "type"), text(item, "id"));
        String named = PlainText.line(ref.toString());
        int version = version(item, named);
        if (!(item.get("body").orElse(Json.NULL) instanceof Json.Obj body)) {
            throw new MalformedException(Bundle.document_bodiless(named));
        }
        fit.problem(ref, version, body).ifPresent(problem -> {
            throw new MalformedException(Bundle.document_unfit(named, problem));
        });
        if (!documents.add(ref)) {
            throw new MalformedException(Bundle.document_twice(named));
        }
        Json.Obj kept = DocumentKinds.of(ref).isPresent() ? (Json.Obj) plain(body) : body;
        return new PreparedChange.Step.Put(ref, version, kept, null, Optional.empty());
    }

    /** @throws MalformedException that names the movement */
    PreparedChange.Step action(Json.Obj item) {
        Optional<Sides> sides = item.get(JsonExport.SIDES).map(json -> codec.fromJson(json, Sides.class));
        LedgerAction action = codec.fromJson(item, LedgerAction.class);
        if (!movements.add(action.id())) {
            throw new MalformedException(Bundle.movement_twice(action.id()));
        }
        return new PreparedChange.Step.Post(action, sides);
    }

    /** Without control characters, as records of ours are when they come another way. What add-ons keep is theirs. */
    private static Json plain(Json json) {
        if (json instanceof Json.Text text) {
            return new Json.Text(PlainText.lines(text.value()));
        }
        if (json instanceof Json.Arr list) {
            return new Json.Arr(list.items().stream().map(IncomingItems::plain).toList());
        }
        if (json instanceof Json.Obj object) {
            Map<String, Json> fields = new LinkedHashMap<>();
            object.fields().forEach((name, value) -> fields.put(name, plain(value)));
            return new Json.Obj(fields);
        }
        return json;
    }

    private static DocRef ref(String owner, String type, String id) {
        try {
            var ref = new DocRef(owner, type, UUID.fromString(id));
            if (ref.id().toString().equalsIgnoreCase(id)) {
                return ref;
            }
        } catch (IllegalArgumentException e) {
            // told below, as for an id that Java would read leniently
        }
        throw new MalformedException(Bundle.document_id(PlainText.line(id), PlainText.line(owner + "/" + type)));
    }

    private static int version(Json.Obj item, String named) {
        try {
            return item.number("typeVersion").map(BigDecimal::intValueExact).orElse(1);
        } catch (ArithmeticException e) {
            throw new MalformedException(Bundle.document_no_version(named), e);
        }
    }

    /** @throws MalformedException when it is not there */
    static String text(Json.Obj item, String field) {
        return item.text(field).orElseThrow(() -> new MalformedException(Bundle.item_field_missing(field)));
    }
}
