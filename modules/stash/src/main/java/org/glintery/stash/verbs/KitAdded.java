package org.glintery.stash.verbs;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.exchange.LegendReader.BadRow;
import org.glintery.api.exchange.LegendReader.Reading;
import org.glintery.api.ledger.Amount;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.NewKit;
import org.glintery.api.verb.TextTable;

/**
 * A kit that was shelved, or that would be.
 *
 * @param imported false when it was only looked at
 * @param columns header in the file to what it was taken for
 * @param badRows rows that can't be taken, each with its line and the reason
 */
public record KitAdded(
        UUID id,
        String title,
        boolean imported,
        List<PieceAdded> pieces,
        Optional<Map<String, String>> columns,
        Optional<String> encoding,
        Optional<String> separator,
        List<BadRow> badRows,
        List<String> warnings) {

    /** A piece of the kit with its legend. */
    public record PieceAdded(UUID id, String title, List<LineAdded> legend) {}

    /** A line as it was understood. */
    public record LineAdded(
            String symbol, DrillAnswer drill, Optional<Long> needed, Amount supplied, Optional<Integer> bags) {}

    static KitAdded of(KitToAdd adding, boolean imported, List<String> warnings) {
        NewKit kit = adding.kit();
        Optional<Reading> reading = adding.reading();
        return new KitAdded(
                kit.id(),
                kit.kit().title(),
                imported,
                kit.pieces().stream()
                        .map(piece -> new PieceAdded(
                                piece.id(),
                                piece.piece().title(),
                                piece.legend().lines().stream()
                                        .map(KitAdded::line)
                                        .toList()))
                        .toList(),
                reading.map(Reading::columns),
                reading.map(Reading::encoding),
                reading.map(Reading::separator),
                reading.map(Reading::badRows).orElse(List.of()),
                warnings);
    }

    /** For people: short when it was shelved, line by line when it was only looked at. */
    String text() {
        List<String> parts = new ArrayList<>();
        for (PieceAdded piece : pieces) {
            parts.add((imported ? "Shelved " : "Would shelve ") + piece.title() + ": "
                    + piece.legend().size() + (piece.legend().size() == 1 ? " line" : " lines") + ", " + needed(piece)
                    + " (" + piece.id() + ")");
        }
        if (!imported) {
            columns.ifPresent(understood -> {
                parts.add("Read as " + encoding.orElse("text") + ", separated by " + separator.orElse("commas") + ".");
                understood.forEach((header, taken) -> parts.add("  " + header + " is " + taken));
            });
            pieces.forEach(piece -> parts.add(table(piece)));
            badRows.forEach(row -> parts.add("Line " + row.line() + ": " + row.reason()));
            warnings.forEach(parts::add);
        }
        return String.join("\n", parts);
    }

    private static String table(PieceAdded piece) {
        TextTable table = new TextTable("Symbol", "Drill", "Needed", "Supplied", "Bags");
        piece.legend()
                .forEach(line -> table.row(
                        line.symbol(),
                        line.drill().card() + " " + line.drill().code(),
                        line.needed().map(String::valueOf).orElse("not known"),
                        line.supplied().words(),
                        line.bags().map(String::valueOf).orElse("")));
        return table.toString();
    }

    private static String needed(PieceAdded piece) {
        if (piece.legend().stream().anyMatch(line -> line.needed().isEmpty())) {
            return "drills not known";
        }
        return piece.legend().stream().mapToLong(line -> line.needed().get()).sum() + " drills";
    }

    private static LineAdded line(LegendLine line) {
        return new LineAdded(line.symbol(), DrillAnswer.of(line.drill()), line.needed(), line.supplied(), line.bags());
    }
}
