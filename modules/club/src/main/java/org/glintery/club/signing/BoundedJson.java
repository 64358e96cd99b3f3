package org.glintery.club.signing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.glintery.api.Json;

/**
 * Reads JSON that strangers wrote, and gives up as soon as it nests too deep or holds too many values, before it takes memory.
 * Not safe for use by several threads.
 */
public final class BoundedJson {
    /** What a document may hold at most. */
    public static final int MOST_VALUES = 4_000;

    public static final int DEEPEST = 16;
    private static final int LONGEST_NUMBER = 40;

    /** Why it was given up. */
    public enum Reason {
        NOT_JSON,
        TOO_DEEP,
        TOO_MANY
    }

    /** Carries the reason to the one place that reads; never shown. */
    public static final class GivenUpException extends Exception {
        private static final long serialVersionUID = 1L;
        private final Reason reason;

        GivenUpException(Reason reason) {
            super(reason.name());
            this.reason = reason;
        }

        public Reason reason() {
            return reason;
        }
    }

    private final String text;
    private int at;
    private int values;

    private BoundedJson(String text) {
        this.text = text;
    }

    /** @param text already known to be short enough */
    public static Json read(String text) throws GivenUpException {
        BoundedJson reading = new BoundedJson(text);
        Json json = reading.value(0);
        reading.blanks();
        reading.check(reading.at == text.length());
        return json;
    }

    private Json value(int depth) throws GivenUpException {
        if (depth > DEEPEST) {
            throw new GivenUpException(Reason.TOO_DEEP);
        }
        if (++values > MOST_VALUES) {
            throw new GivenUpException(Reason.TOO_MANY);
        }
        blanks();
        switch (peek()) {
            case '{':
                return object(depth);
            case '[':
                return list(depth);
            case '"':
                return new Json.Text(string());
            case 't':
                return word("true", new Json.Flag(true));
            case 'f':
                return word("false", new Json.Flag(false));
            case 'n':
                return word("null", Json.NULL);
            default:
                return number();
        }
    }

    private Json object(int depth) throws GivenUpException {
        Map<String, Json> fields = new LinkedHashMap<>();
        at++;
        if (!ends('}')) {
            do {
                blanks();
                String name = string();
                blanks();
                take(':');
                Json value = value(depth + 1);
                check(fields.put(name, value) == null);
            } while (goesOn('}'));
        }
        return new Json.Obj(fields);
    }

    private Json list(int depth) throws GivenUpException {
        List<Json> items = new ArrayList<>();
        at++;
        if (!ends(']')) {
            do {
                items.add(value(depth + 1));
            } while (goesOn(']'));
        }
        return new Json.Arr(items);
    }

    private boolean ends(char closing) throws GivenUpException {
        blanks();
        boolean ended = peek() == closing;
        at += ended ? 1 : 0;
        return ended;
    }

    private boolean goesOn(char closing) throws GivenUpException {
        if (ends(closing)) {
            return false;
        }
        take(',');
        return true;
    }

    private String string() throws GivenUpException {
        take('"');
        StringBuilder read = new StringBuilder();
        while (peek() != '"') {
            char c = text.charAt(at++);
            check(c >= ' ');
            read.append(c == '\\' ? escaped() : c);
        }
        at++;
        return read.toString();
    }

    private char escaped() throws GivenUpException {
        char c = peek();
        at++;
        if (c == 'u') {
            check(at + 4 <= text.length() && text.substring(at, at + 4).matches("[0-9a-fA-F]{4}"));
            at += 4;
            return (char) Integer.parseInt(text.substring(at - 4, at), 16);
        }
        int named = "btnfr\"\\/".indexOf(c);
        check(named >= 0);
        return "\b\t\n\f\r\"\\/".charAt(named);
    }

    private Json word(String word, Json meaning) throws GivenUpException {
        check(text.startsWith(word, at));
        at += word.length();
        return meaning;
    }

    private Json number() throws GivenUpException {
        int from = at;
        while (at < text.length() && "+-.eE0123456789".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        String written = text.substring(from, at);
        check(written.length() <= LONGEST_NUMBER
                && written.matches("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]{1,3})?"));
        return new Json.Num(new BigDecimal(written));
    }

    private void blanks() {
        while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    private char peek() throws GivenUpException {
        check(at < text.length());
        return text.charAt(at);
    }

    private void take(char wanted) throws GivenUpException {
        check(peek() == wanted);
        at++;
    }

    private void check(boolean right) throws GivenUpException {
        if (!right) {
            throw new GivenUpException(Reason.NOT_JSON);
        }
    }
}
