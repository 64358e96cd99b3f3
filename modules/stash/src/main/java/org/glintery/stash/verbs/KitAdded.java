package org.glintery.stash.verbs;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.exchange.LegendReader.BadRow;
import org.glintery.api.exchange.LegendReader.Reading;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.NewKit;
import org.glintery.api.verb.DrillAnswer;
import org.glintery.api.verb.TextTable;
import org.openide.util.NbBundle.Messages;

/**
 * A kit that was shelved, or that would be.
 *
 * @param outcome what was done with it, or would be when it was only looked at
 * @param columns header in the file to what it was taken for
 * @param badRows rows that can't be taken, each with its line and the reason
 */
public record KitAdded(
        UUID id,
        String title,
        Outcome outcome,
        List<PieceAdded> pieces,
        Optional<Map<String, String>> columns,
        Optional<String> encoding,
        Optional<String> separator,
        List<BadRow> badRows,
        List<String> warnings) {

    /** What became of it. */
    public enum Outcome {
        SHELVED,
        WOULD_BE_SHELVED,
        WOULD_BE_REFUSED
    }

    /** A piece of the kit with its legend. */
    public record PieceAdded(UUID id, String title, List<LineAdded> legend) {}

    /** A line as it was understood. */
    public record LineAdded(
            String symbol, DrillAnswer drill, Optional<Long> needed, Amount supplied, Optional<Integer> bags) {}

    static KitAdded of(KitToAdd adding, Outcome outcome, List<String> warnings) {
        NewKit kit = adding.kit();
        Optional<Reading> reading = adding.reading();
        return new KitAdded(
                kit.id(),
                kit.kit().title(),
                outcome,
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
    @Messages({
        "KitAdded.wouldNot=Nothing would be shelved. What stands in the way comes last.",
        "# {0} - encoding",
        "# {1} - separator",
        "KitAdded.read=Read as {0}, separated by {1}.",
        "KitAdded.text=text",
        "KitAdded.commas=commas",
        "# {0} - header",
        "# {1} - what it is",
        "KitAdded.column={0} is {1}",
        "# {0} - number of the line",
        "# {1} - what is wrong",
        "KitAdded.badRow=Line {0}: {1}"
    })
    String text() {
        List<String> parts = new ArrayList<>();
        if (outcome == Outcome.WOULD_BE_REFUSED) {
            parts.add(Bundle.KitAdded_wouldNot());
        } else {
            pieces.forEach(piece -> parts.add(shelved(piece)));
        }
        if (outcome != Outcome.SHELVED) {
            columns.ifPresent(understood -> {
                parts.add(Bundle.KitAdded_read(
                        encoding.orElse(Bundle.KitAdded_text()), separator.orElse(Bundle.KitAdded_commas())));
                understood.forEach((header, taken) -> parts.add("  " + Bundle.KitAdded_column(header, taken)));
            });
            pieces.forEach(piece -> parts.add(table(piece)));
            badRows.forEach(row -> parts.add(Bundle.KitAdded_badRow(String.valueOf(row.line()), row.reason())));
            warnings.forEach(parts::add);
        }
        return String.join("\n", parts);
    }

    @Messages({
        "KitAdded.symbol=Symbol",
        "KitAdded.drill=Drill",
        "KitAdded.needed=Needed",
        "KitAdded.supplied=Supplied",
        "KitAdded.bags=Bags",
        "KitAdded.notKnown=not known"
    })
    private static String table(PieceAdded piece) {
        TextTable table = new TextTable(
                Bundle.KitAdded_symbol(),
                Bundle.KitAdded_drill(),
                Bundle.KitAdded_needed(),
                Bundle.KitAdded_supplied(),
                Bundle.KitAdded_bags());
        piece.legend()
                .forEach(line -> table.row(
                        line.symbol(),
                        line.drill().drill().words(),
                        line.needed().map(Balance::grouped).orElse(Bundle.KitAdded_notKnown()),
                        line.supplied().words(),
                        line.bags().map(Balance::grouped).orElse("")));
        return table.toString();
    }

    @Messages({
        "# {0} - title",
        "# {1} - lines",
        "# {2} - lines in words",
        "# {3} - id",
        "# {4} - drills",
        "# {5} - drills in words",
        "KitAdded.shelved=Shelved {0}: {1,choice,0#{2} lines|1#{2} line|1<{2} lines}, {4,choice,0#{5} drills|1#{5} drill|1<{5} drills} ({3})",
        "# {0} - title",
        "# {1} - lines",
        "# {2} - lines in words",
        "# {3} - id",
        "KitAdded.shelvedUnknown=Shelved {0}: {1,choice,0#{2} lines|1#{2} line|1<{2} lines}, drills not known ({3})",
        "# {0} - title",
        "# {1} - lines",
        "# {2} - lines in words",
        "# {3} - id",
        "# {4} - drills",
        "# {5} - drills in words",
        "KitAdded.would=Would shelve {0}: {1,choice,0#{2} lines|1#{2} line|1<{2} lines}, {4,choice,0#{5} drills|1#{5} drill|1<{5} drills} ({3})",
        "# {0} - title",
        "# {1} - lines",
        "# {2} - lines in words",
        "# {3} - id",
        "KitAdded.wouldUnknown=Would shelve {0}: {1,choice,0#{2} lines|1#{2} line|1<{2} lines}, drills not known ({3})",
        "# {0} - title",
        "# {1} - id",
        "KitAdded.shelvedBare=Shelved {0}: no legend yet ({1})",
        "# {0} - title",
        "# {1} - id",
        "KitAdded.wouldBare=Would shelve {0}: no legend yet ({1})"
    })
    private String shelved(PieceAdded piece) {
        boolean done = outcome == Outcome.SHELVED;
        if (piece.legend().isEmpty()) {
            return done
                    ? Bundle.KitAdded_shelvedBare(piece.title(), piece.id())
                    : Bundle.KitAdded_wouldBare(piece.title(), piece.id());
        }
        int count = piece.legend().size();
        String lines = Balance.grouped(count);
        boolean known = piece.legend().stream().allMatch(line -> line.needed().isPresent());
        if (!known) {
            return done
                    ? Bundle.KitAdded_shelvedUnknown(piece.title(), count, lines, piece.id())
                    : Bundle.KitAdded_wouldUnknown(piece.title(), count, lines, piece.id());
        }
        long sum =
                piece.legend().stream().mapToLong(line -> line.needed().get()).sum();
        String drills = Balance.grouped(sum);
        return done
                ? Bundle.KitAdded_shelved(piece.title(), count, lines, piece.id(), sum, drills)
                : Bundle.KitAdded_would(piece.title(), count, lines, piece.id(), sum, drills);
    }

    private static LineAdded line(LegendLine line) {
        return new LineAdded(line.symbol(), DrillAnswer.of(line.drill()), line.needed(), line.supplied(), line.bags());
    }
}
