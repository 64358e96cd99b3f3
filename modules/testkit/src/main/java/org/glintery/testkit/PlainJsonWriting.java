package org.glintery.testkit;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.glintery.api.Json;

/** JSON as text. */
final class PlainJsonWriting {
    private static final String INDENT = "  ";

    private PlainJsonWriting() {}

    static String compact(Json json) {
        if (json instanceof Json.Obj object) {
            return object.fields().entrySet().stream()
                    .map(field -> quoted(field.getKey()) + ":" + compact(field.getValue()))
                    .collect(Collectors.joining(",", "{", "}"));
        }
        return json instanceof Json.Arr array
                ? array.items().stream().map(PlainJsonWriting::compact).collect(Collectors.joining(",", "[", "]"))
                : single(json);
    }

    static String pretty(Json json) {
        return pretty(json, "\n");
    }

    private static String pretty(Json json, String lineStart) {
        String inner = lineStart + INDENT;
        if (json instanceof Json.Obj object) {
            Function<Map.Entry<String, Json>, String> field =
                    one -> inner + quoted(one.getKey()) + ": " + pretty(one.getValue(), inner);
            return block("{", object.fields().entrySet().stream().map(field).toList(), lineStart + "}", "{}");
        }
        if (json instanceof Json.Arr array) {
            List<String> items = array.items().stream()
                    .map(one -> inner + pretty(one, inner))
                    .toList();
            return block("[", items, lineStart + "]", "[]");
        }
        return single(json);
    }

    private static String block(String start, List<String> lines, String end, String empty) {
        return lines.isEmpty() ? empty : start + String.join(",", lines) + end;
    }

    private static String single(Json json) {
        if (json instanceof Json.Text text) {
            return quoted(text.value());
        }
        if (json instanceof Json.Num number) {
            return number.value().toPlainString();
        }
        return json instanceof Json.Flag flag ? String.valueOf(flag.value()) : "null";
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.chars().forEach(c -> {
            if (c == '"' || c == '\\') {
                quoted.append('\\').append((char) c);
            } else if (c < ' ') {
                quoted.append(String.format("\\u%04x", c));
            } else {
                quoted.append((char) c);
            }
        });
        return quoted.append('"').toString();
    }
}
