package org.glintery.testkit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;

/** Reads one JSON value (RFC 8259) from a text, by recursive descent. Used once. */
final class PlainJsonReading {
    private static final int MOST_DEPTH = 200;
    private static final int MOST_DIGITS = 1_000;
    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9]\\d*)(\\.\\d+)?([eE][+-]?\\d{1,9})?");
    private static final String ESCAPES = "\"\\/bfnrt";
    private static final String MEANINGS = "\"\\/\b\f\n\r\t";

    private final String text;
    private int at;
    private int depth;

    PlainJsonReading(String text) {
        this.text = text;
    }

    Json whole() {
        Json value = value();
        blanks();
        if (at < text.length()) {
            throw new MalformedException("there is more than one JSON value in this text");
        }
        return value;
    }

    private Json value() {
        blanks();
        return switch (next()) {
            case '{' -> nested(this::object);
            case '[' -> nested(this::array);
            case '"' -> new Json.Text(string());
            case 't' -> word("true", new Json.Flag(true));
            case 'f' -> word("false", new Json.Flag(false));
            case 'n' -> word("null", Json.NULL);
            default -> number();
        };
    }

    private Json nested(java.util.function.Supplier<Json> inside) {
        if (++depth > MOST_DEPTH) {
            throw new MalformedException("the JSON nests deeper than " + MOST_DEPTH);
        }
        at++;
        Json value = inside.get();
        depth--;
        return value;
    }

    private Json object() {
        Map<String, Json> fields = new LinkedHashMap<>();
        while (!ends('}', fields.isEmpty())) {
            blanks();
            String name = string();
            blanks();
            expect(':');
            if (fields.put(name, value()) != null) {
                throw wrong();
            }
        }
        return new Json.Obj(fields);
    }

    private Json array() {
        List<Json> items = new ArrayList<>();
        while (!ends(']', items.isEmpty())) {
            items.add(value());
        }
        return new Json.Arr(items);
    }

    /** Whether the end stands here; else goes past the comma that must stand between two values. */
    private boolean ends(char end, boolean first) {
        blanks();
        if (next() == end) {
            at++;
            return true;
        }
        if (!first) {
            expect(',');
        }
        return false;
    }

    private String string() {
        expect('"');
        StringBuilder read = new StringBuilder();
        while (next() != '"') {
            char c = text.charAt(at++);
            if (c < ' ') {
                throw wrong();
            }
            read.append(c == '\\' ? escaped() : c);
        }
        at++;
        return read.toString();
    }

    private char escaped() {
        char c = next();
        at++;
        if (c == 'u' && at + 4 <= text.length()) {
            String digits = text.substring(at, at + 4);
            if (digits.chars().allMatch(d -> Character.digit(d, 16) >= 0)) {
                at += 4;
                return (char) Integer.parseInt(digits, 16);
            }
        }
        int known = ESCAPES.indexOf(c);
        if (known < 0) {
            throw wrong();
        }
        return MEANINGS.charAt(known);
    }

    private Json number() {
        Matcher found = NUMBER.matcher(text).region(at, text.length());
        if (!found.lookingAt()) {
            throw wrong();
        }
        at = found.end();
        BigDecimal value = new BigDecimal(found.group());
        if (Math.abs((long) value.scale()) > MOST_DIGITS || value.precision() > MOST_DIGITS) {
            throw new MalformedException("a number has too many digits");
        }
        return new Json.Num(value);
    }

    private Json word(String word, Json meaning) {
        if (!text.startsWith(word, at)) {
            throw wrong();
        }
        at += word.length();
        return meaning;
    }

    private void blanks() {
        while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    private char next() {
        if (at >= text.length()) {
            throw new MalformedException("the JSON ends too early");
        }
        return text.charAt(at);
    }

    private void expect(char c) {
        if (next() != c) {
            throw wrong();
        }
        at++;
    }

    private MalformedException wrong() {
        return new MalformedException("not JSON at character " + (at + 1));
    }
}
