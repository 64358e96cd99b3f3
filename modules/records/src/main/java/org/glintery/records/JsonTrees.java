package org.glintery.records;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;
import org.openide.util.NbBundle.Messages;

/** Turns Jackson's tokens and trees into our values and back. */
@Messages({
    "json-none=there is nothing in this text",
    "json-several=something follows where it should end",
    "json-early=it ends too early",
    "json-infinite=a number in it is not finite",
    "json-number-range=a number in it is too large or too small",
    "json-digits=a number in it has too many digits"
})
final class JsonTrees {
    /** Digits before or after the point; a short text such as 1e999999999 must not fill the memory. */
    private static final int MOST_DIGITS = 1_000;

    private JsonTrees() {}

    /** Reads the only value of a text. */
    static Json readWhole(JsonParser parser) throws IOException {
        if (parser.nextToken() == null) {
            throw new MalformedException(Bundle.json_none());
        }
        Json value = read(parser);
        if (parser.nextToken() != null) {
            throw new MalformedException(Bundle.json_several());
        }
        return value;
    }

    /** Reads the value at whose first token the parser stands. */
    static Json read(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> {
                var fields = new LinkedHashMap<String, Json>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String name = parser.currentName();
                    parser.nextToken();
                    fields.put(name, read(parser));
                }
                yield new Json.Obj(fields);
            }
            case START_ARRAY -> {
                var items = new ArrayList<Json>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    items.add(read(parser));
                }
                yield new Json.Arr(items);
            }
            case VALUE_STRING -> new Json.Text(parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(decimal(parser));
            case VALUE_TRUE -> new Json.Flag(true);
            case VALUE_FALSE -> new Json.Flag(false);
            case VALUE_NULL -> Json.NULL;
            default -> throw new MalformedException(Bundle.json_early());
        };
    }

    static Json of(JsonNode node) {
        if (node.isObject()) {
            var fields = new LinkedHashMap<String, Json>();
            node.properties().forEach(field -> fields.put(field.getKey(), of(field.getValue())));
            return new Json.Obj(fields);
        }
        if (node.isArray()) {
            var items = new ArrayList<Json>(node.size());
            node.forEach(item -> items.add(of(item)));
            return new Json.Arr(items);
        }
        if (node.isNumber()) {
            if ((node.isDouble() || node.isFloat()) && !Double.isFinite(node.doubleValue())) {
                throw new MalformedException(Bundle.json_infinite());
            }
            return number(node.decimalValue());
        }
        if (node.isBoolean()) {
            return new Json.Flag(node.booleanValue());
        }
        return node.isTextual() ? new Json.Text(node.textValue()) : Json.NULL;
    }

    /** @throws MalformedException for an exponent that no number holds, at which the parser fails in a way of its own */
    private static BigDecimal decimal(JsonParser parser) throws IOException {
        try {
            return parser.getDecimalValue();
        } catch (NumberFormatException e) {
            throw new MalformedException(Bundle.json_number_range());
        }
    }

    private static Json number(BigDecimal value) {
        if (Math.abs((long) value.scale()) > MOST_DIGITS || value.precision() > MOST_DIGITS) {
            throw new MalformedException(Bundle.json_digits());
        }
        return new Json.Num(value);
    }

    static void write(Json json, JsonGenerator to) throws IOException {
        if (json instanceof Json.Obj object) {
            to.writeStartObject();
            for (var field : object.fields().entrySet()) {
                to.writeFieldName(field.getKey());
                write(field.getValue(), to);
            }
            to.writeEndObject();
        } else if (json instanceof Json.Arr array) {
            to.writeStartArray();
            for (Json item : array.items()) {
                write(item, to);
            }
            to.writeEndArray();
        } else if (json instanceof Json.Text text) {
            to.writeString(text.value());
        } else if (json instanceof Json.Num number) {
            to.writeNumber(number.value());
        } else if (json instanceof Json.Flag flag) {
            to.writeBoolean(flag.value());
        } else {
            to.writeNull();
        }
    }
}
