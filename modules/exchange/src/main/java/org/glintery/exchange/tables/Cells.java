package org.glintery.exchange.tables;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import org.glintery.api.Json;
import org.glintery.api.JsonCodec;
import org.glintery.api.MalformedException;
import org.glintery.exchange.csv.FormulaGuard;
import org.openide.util.NbBundle.Messages;

/**
 * One value in one cell, so that it reads back exactly. A blank cell is a value that is not there. Empty text is a single
 * apostrophe, which also stands before text that a spreadsheet could run. What is not of its column's kind is written as
 * JSON after a tilde.
 */
@Messages({
    "# {0} - what stands there",
    "Cells.noNumber=''{0}'' is not a number",
    "# {0} - what stands there",
    "Cells.noFlag=''{0}'' is neither true nor false",
    "# {0} - what stands there",
    "Cells.noItems=''{0}'' is no list of things"
})
final class Cells {
    private static final String JSON = "~";
    private static final int MOST_DIGITS = 1_000;

    private final JsonCodec codec;

    Cells(JsonCodec codec) {
        this.codec = codec;
    }

    String written(Optional<Json> value, Kind kind) {
        if (value.isEmpty()) {
            return "";
        }
        Json json = value.get();
        if (kind == Kind.TEXT && json instanceof Json.Text text) {
            return text(text.value());
        }
        if (kind == Kind.NUMBER && json instanceof Json.Num number) {
            return number.value().toPlainString();
        }
        if (kind == Kind.FLAG && json instanceof Json.Flag flag) {
            return String.valueOf(flag.value());
        }
        if (kind == Kind.LIST && json instanceof Json.Arr array) {
            return String.valueOf(array.items().size());
        }
        if (kind == Kind.MAP && json instanceof Json.Obj object) {
            return String.valueOf(object.fields().size());
        }
        return JSON + codec.compact(json);
    }

    static String text(String text) {
        return text.isEmpty() || text.startsWith(JSON) ? "'" + text : FormulaGuard.guarded(text);
    }

    static String textOf(String cell) {
        return FormulaGuard.bare(cell);
    }

    /** A value as it stands; a list or map only when it is written as JSON. */
    Optional<Json> value(String cell, Kind kind) {
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        if (cell.startsWith(JSON)) {
            return Optional.of(codec.parse(cell.substring(1)));
        }
        return switch (kind) {
            case TEXT -> Optional.of(new Json.Text(textOf(cell)));
            case NUMBER -> Optional.of(new Json.Num(number(cell, kind)));
            case FLAG -> Optional.of(flag(cell));
            case LIST, MAP, RECORD -> throw wrong(cell, kind);
        };
    }

    static boolean isJson(String cell) {
        return cell.startsWith(JSON);
    }

    /** How many items a list or map has. */
    static int count(String cell, Kind kind) {
        try {
            return number(cell, kind).intValueExact();
        } catch (ArithmeticException e) {
            throw wrong(cell, kind);
        }
    }

    /** Spreadsheets of some languages write a comma for the point. */
    private static BigDecimal number(String cell, Kind kind) {
        try {
            if (cell.length() > MOST_DIGITS) {
                throw wrong(cell, kind);
            }
            BigDecimal number = new BigDecimal(cell.strip().replace(',', '.'));
            if (Math.abs((long) number.scale()) > MOST_DIGITS) {
                throw wrong(cell, kind);
            }
            return number;
        } catch (NumberFormatException e) {
            throw wrong(cell, kind);
        }
    }

    /** Spreadsheets write flags in capitals. */
    private static Json flag(String cell) {
        String word = cell.strip().toLowerCase(Locale.ROOT);
        if (!word.equals("true") && !word.equals("false")) {
            throw wrong(cell, Kind.FLAG);
        }
        return new Json.Flag(word.equals("true"));
    }

    private static MalformedException wrong(String cell, Kind kind) {
        String shown = cell.length() > 40 ? cell.substring(0, 40) + "…" : cell;
        return new MalformedException(
                switch (kind) {
                    case NUMBER -> Bundle.Cells_noNumber(shown);
                    case FLAG -> Bundle.Cells_noFlag(shown);
                    case TEXT, LIST, MAP, RECORD -> Bundle.Cells_noItems(shown);
                });
    }
}
