package org.glintery.club.signing;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.Map;
import java.util.TreeMap;
import org.glintery.api.Json;

/**
 * JSON written in the one way that RFC 8785 lays down, so that equal documents have equal bytes. What can't be kept exactly that
 * way, a number with more digits than a double has or half of a pair of code units, is refused. Pure; any thread.
 */
public final class CanonicalJson {
    private final StringBuilder out = new StringBuilder();

    private CanonicalJson() {}

    /** @throws IllegalArgumentException for what can't be kept exactly */
    public static String text(Json json) {
        CanonicalJson writing = new CanonicalJson();
        writing.value(json);
        return writing.out.toString();
    }

    public static byte[] bytes(Json json) {
        return text(json).getBytes(StandardCharsets.UTF_8);
    }

    private void value(Json json) {
        if (json instanceof Json.Obj object) {
            object(object);
        } else if (json instanceof Json.Arr list) {
            list(list);
        } else if (json instanceof Json.Text text) {
            string(text.value());
        } else if (json instanceof Json.Num number) {
            out.append(exactly(number.value()));
        } else if (json instanceof Json.Flag flag) {
            out.append(flag.value());
        } else {
            out.append("null");
        }
    }

    private void object(Json.Obj object) {
        out.append('{');
        // by code units, as String compares
        Iterator<Map.Entry<String, Json>> fields =
                new TreeMap<>(object.fields()).entrySet().iterator();
        while (fields.hasNext()) {
            Map.Entry<String, Json> field = fields.next();
            string(field.getKey());
            out.append(':');
            value(field.getValue());
            out.append(fields.hasNext() ? "," : "");
        }
        out.append('}');
    }

    private void list(Json.Arr list) {
        out.append('[');
        Iterator<Json> items = list.items().iterator();
        while (items.hasNext()) {
            value(items.next());
            out.append(items.hasNext() ? "," : "");
        }
        out.append(']');
    }

    private static String exactly(BigDecimal number) {
        String written = EcmaNumber.text(number.doubleValue());
        if (new BigDecimal(written).compareTo(number) != 0) {
            throw new IllegalArgumentException("more digits than a double keeps: " + number);
        }
        return written;
    }

    private void string(String text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isHighSurrogate(c) && i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))) {
                out.append(c).append(text.charAt(++i));
            } else if (Character.isSurrogate(c)) {
                throw new IllegalArgumentException("half of a pair of code units");
            } else {
                character(c);
            }
        }
        out.append('"');
    }

    private void character(char c) {
        int named = "\b\t\n\f\r\"\\".indexOf(c);
        if (named >= 0) {
            out.append('\\').append("btnfr\"\\".charAt(named));
        } else if (c < ' ') {
            out.append("\\u").append(HexFormat.of().toHexDigits(c));
        } else {
            out.append(c);
        }
    }
}
