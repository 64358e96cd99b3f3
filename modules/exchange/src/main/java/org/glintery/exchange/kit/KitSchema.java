package org.glintery.exchange.kit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.path.NodePath;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.glintery.api.Json;
import org.glintery.api.ledger.Balance;
import org.openide.util.NbBundle.Messages;

/** The published schema of kit files. Made when first needed; any thread. */
@Messages({
    "# {0} - place",
    "# {1} - property",
    "KitSchema.missing={0}: {1} is missing",
    "# {0} - place",
    "# {1} - property",
    "KitSchema.unknown={0}: {1} is not a word we know here",
    "# {0} - place",
    "# {1} - kinds",
    "KitSchema.type={0} should be {1}",
    "# {0} - place",
    "# {1} - words",
    "KitSchema.enum={0} should be one of {1}",
    "# {0} - place",
    "KitSchema.picture={0} should have either bytes or a file",
    "# {0} - place",
    "KitSchema.colour={0} is blank or not written as it should be",
    "# {0} - place",
    "# {1} - least",
    "KitSchema.least={0} should be at least {1}",
    "# {0} - place",
    "# {1} - most",
    "KitSchema.most={0} should be at most {1}",
    "# {0} - place",
    "# {1} - most",
    "KitSchema.long={0} has more than {1} characters",
    "# {0} - place",
    "# {1} - most",
    "KitSchema.many={0} has more than {1} items",
    "# {0} - place",
    "KitSchema.blank={0} is blank",
    "# {0} - place",
    "KitSchema.basis={0}: supplied is missing, though suppliedBasis or suppliedUncertainty tell of it",
    "# {0} - place",
    "# {1} - step",
    "KitSchema.steps={0} should be a multiple of {1}",
    "# {0} - place",
    "KitSchema.other={0} is not as it should be",
    "KitSchema.kindText=text",
    "KitSchema.kindNumber=a number",
    "KitSchema.kindWhole=a whole number",
    "KitSchema.kindFlag=true or false",
    "KitSchema.kindList=a list",
    "KitSchema.kindObject=an object",
    "KitSchema.whole=the file"
})
final class KitSchema {
    static final String RESOURCE = "/org/glintery/exchange/kit.schema.json";

    private KitSchema() {}

    private static final class Loaded {
        private static final Schema SCHEMA = load();
    }

    private static Schema load() {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text(), InputFormat.JSON);
    }

    /** As it is published. */
    static String text() {
        try (InputStream in = KitSchema.class.getResourceAsStream(RESOURCE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is wrong with a kit, in plain words with the place of each; empty when it is right. */
    static List<String> problems(Json kit) {
        return Loaded.SCHEMA.validate(node(kit)).stream()
                .map(KitSchema::words)
                .distinct()
                .toList();
    }

    private static String words(Error error) {
        String place = place(error.getInstanceLocation());
        return switch (error.getKeyword()) {
            case "required" -> Bundle.KitSchema_missing(place, error.getProperty());
            case "additionalProperties" -> Bundle.KitSchema_unknown(place, error.getProperty());
            case "type" ->
                Bundle.KitSchema_type(place, kind(error.getSchemaNode().asText()));
            case "enum", "const" -> Bundle.KitSchema_enum(place, listed(error.getSchemaNode()));
            case "oneOf" -> Bundle.KitSchema_picture(place);
            case "pattern" -> Bundle.KitSchema_colour(place);
            case "minimum", "exclusiveMinimum" -> Bundle.KitSchema_least(place, limit(error));
            case "maximum" -> Bundle.KitSchema_most(place, limit(error));
            case "maxLength" -> Bundle.KitSchema_long(place, limit(error));
            case "maxItems" -> Bundle.KitSchema_many(place, limit(error));
            case "maxProperties" -> Bundle.KitSchema_many(place, limit(error));
            case "minLength" -> Bundle.KitSchema_blank(place);
            case "dependentRequired" -> Bundle.KitSchema_basis(place);
            case "multipleOf" -> Bundle.KitSchema_steps(place, limit(error));
            default -> Bundle.KitSchema_other(place);
        };
    }

    private static String kind(String type) {
        return switch (type) {
            case "string" -> Bundle.KitSchema_kindText();
            case "number" -> Bundle.KitSchema_kindNumber();
            case "integer" -> Bundle.KitSchema_kindWhole();
            case "boolean" -> Bundle.KitSchema_kindFlag();
            case "array" -> Bundle.KitSchema_kindList();
            case "object" -> Bundle.KitSchema_kindObject();
            default -> type;
        };
    }

    private static String limit(Error error) {
        JsonNode limit = error.getSchemaNode();
        return limit.isIntegralNumber() ? Balance.grouped(limit.asLong()) : limit.asText();
    }

    private static String listed(JsonNode words) {
        if (!words.isArray()) {
            return words.asText();
        }
        var listed = new StringBuilder();
        words.forEach(word -> listed.append(listed.isEmpty() ? "" : ", ").append(word.asText()));
        return listed.toString();
    }

    /** A JSON path such as {@code pieces[0].legend[3].needed}. */
    private static String place(NodePath path) {
        var place = new StringBuilder();
        for (int i = 0; i < path.getNameCount(); i++) {
            if (path.getElement(i) instanceof Integer index) {
                place.append('[').append(index).append(']');
            } else {
                place.append(place.isEmpty() ? "" : ".").append(path.getName(i));
            }
        }
        return place.isEmpty() ? Bundle.KitSchema_whole() : place.toString();
    }

    private static JsonNode node(Json json) {
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        if (json instanceof Json.Obj object) {
            var node = nodes.objectNode();
            object.fields().forEach((name, value) -> node.set(name, node(value)));
            return node;
        }
        if (json instanceof Json.Arr array) {
            var node = nodes.arrayNode();
            array.items().forEach(item -> node.add(node(item)));
            return node;
        }
        if (json instanceof Json.Num number) {
            boolean whole = number.value().scale() <= 0;
            return whole ? nodes.numberNode(number.value().toBigInteger()) : nodes.numberNode(number.value());
        }
        if (json instanceof Json.Text text) {
            return nodes.textNode(text.value());
        }
        return json instanceof Json.Flag flag ? nodes.booleanNode(flag.value()) : nodes.nullNode();
    }
}
