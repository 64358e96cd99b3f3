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
    "schema-missing={0}: {1} is missing",
    "# {0} - place",
    "# {1} - property",
    "schema-unknown={0}: {1} is not a word we know here",
    "# {0} - place",
    "# {1} - kinds",
    "schema-type={0} should be {1}",
    "# {0} - place",
    "# {1} - words",
    "schema-enum={0} should be one of {1}",
    "# {0} - place",
    "schema-picture={0} should have either bytes or a file",
    "# {0} - place",
    "schema-colour={0} is blank or not written as it should be",
    "# {0} - place",
    "# {1} - least",
    "schema-least={0} should be at least {1}",
    "# {0} - place",
    "# {1} - most",
    "schema-most={0} should be at most {1}",
    "# {0} - place",
    "# {1} - most",
    "schema-long={0} has more than {1} characters",
    "# {0} - place",
    "# {1} - most",
    "schema-many={0} has more than {1} items",
    "# {0} - place",
    "schema-blank={0} is blank",
    "# {0} - place",
    "schema-basis={0}: supplied is missing, though suppliedBasis or suppliedUncertainty tell of it",
    "# {0} - place",
    "# {1} - step",
    "schema-steps={0} should be a multiple of {1}",
    "# {0} - place",
    "schema-other={0} is not as it should be",
    "schema-kind-text=text",
    "schema-kind-number=a number",
    "schema-kind-whole=a whole number",
    "schema-kind-flag=true or false",
    "schema-kind-list=a list",
    "schema-kind-object=an object",
    "schema-whole=the file"
})
final class KitSchema {
    static final String RESOURCE = "/org/glintery/exchange/kit.schema.json";

    private KitSchema() {}

    private static final class Loaded {
        private static final Schema SCHEMA = load();
    }

    private static Schema load() {
        try (InputStream in = KitSchema.class.getResourceAsStream(RESOURCE)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(text, InputFormat.JSON);
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
            case "required" -> Bundle.schema_missing(place, error.getProperty());
            case "additionalProperties" -> Bundle.schema_unknown(place, error.getProperty());
            case "type" -> Bundle.schema_type(place, kind(error.getSchemaNode().asText()));
            case "enum", "const" -> Bundle.schema_enum(place, listed(error.getSchemaNode()));
            case "oneOf" -> Bundle.schema_picture(place);
            case "pattern" -> Bundle.schema_colour(place);
            case "minimum", "exclusiveMinimum" -> Bundle.schema_least(place, limit(error));
            case "maximum" -> Bundle.schema_most(place, limit(error));
            case "maxLength" -> Bundle.schema_long(place, limit(error));
            case "maxItems" -> Bundle.schema_many(place, limit(error));
            case "maxProperties" -> Bundle.schema_many(place, limit(error));
            case "minLength" -> Bundle.schema_blank(place);
            case "dependentRequired" -> Bundle.schema_basis(place);
            case "multipleOf" -> Bundle.schema_steps(place, limit(error));
            default -> Bundle.schema_other(place);
        };
    }

    private static String kind(String type) {
        return switch (type) {
            case "string" -> Bundle.schema_kind_text();
            case "number" -> Bundle.schema_kind_number();
            case "integer" -> Bundle.schema_kind_whole();
            case "boolean" -> Bundle.schema_kind_flag();
            case "array" -> Bundle.schema_kind_list();
            case "object" -> Bundle.schema_kind_object();
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
        return place.isEmpty() ? Bundle.schema_whole() : place.toString();
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
