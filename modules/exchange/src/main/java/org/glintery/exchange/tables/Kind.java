package org.glintery.exchange.tables;

import java.util.Locale;
import java.util.Optional;
import org.glintery.api.Json;

/** What a column holds. The cells of lists and maps say how many items there are; the items stand in a table of their own. */
enum Kind {
    TEXT,
    NUMBER,
    FLAG,
    LIST,
    MAP,
    /** Holds something only where a record is not spread over its columns. */
    RECORD;

    /** That of a single value; empty for null. */
    static Optional<Kind> ofSingle(Json value) {
        if (value instanceof Json.Text) {
            return Optional.of(TEXT);
        }
        if (value instanceof Json.Num) {
            return Optional.of(NUMBER);
        }
        return value instanceof Json.Flag ? Optional.of(FLAG) : Optional.empty();
    }

    static Optional<Kind> named(String word) {
        for (Kind kind : values()) {
            if (kind.word().equals(word)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
