package org.glintery.exchange.tables;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A column of a table.
 *
 * @param path the keys from the row's value to the column's; none for the row's value itself
 */
record Column(List<String> path, Kind kind) {
    private static final String WHOLE = "(value)";

    Column {
        path = List.copyOf(path);
    }

    /** @param name as {@link #name} gives it */
    static Column named(String name, Kind kind) {
        List<String> path = name.equals(WHOLE)
                ? List.of()
                : Arrays.stream(name.split("\\.", -1)).map(Column::decoded).toList();
        return new Column(path, kind);
    }

    /** The keys with points between them. */
    String name() {
        return path.isEmpty() ? WHOLE : path.stream().map(Column::encoded).collect(Collectors.joining("."));
    }

    /** The table in which a list's or a map's items stand. */
    String innerTable(String table) {
        return table + "." + (path.isEmpty() ? "item" : name());
    }

    /** Letters, digits, hyphen within and underscore as they are, all else as percent and hexadecimal bytes. */
    static String encoded(String key) {
        var text = new StringBuilder();
        for (byte b : key.getBytes(StandardCharsets.UTF_8)) {
            char c = (char) (b & 0xFF);
            boolean plain = c < 128 && (Character.isLetterOrDigit(c) || c == '_' || c == '-' && !text.isEmpty());
            text.append(plain ? String.valueOf(c) : String.format(Locale.ROOT, "%%%02X", (int) c));
        }
        return text.toString();
    }

    /** @throws IllegalArgumentException for what {@link #encoded} does not make */
    static String decoded(String text) {
        var bytes = new ByteArrayOutputStream(text.length());
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) == '%') {
                if (i + 3 > text.length()) {
                    throw new IllegalArgumentException(text);
                }
                bytes.write(Integer.parseInt(text.substring(i + 1, i + 3), 16));
                i += 2;
            } else {
                bytes.write(text.charAt(i));
            }
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
