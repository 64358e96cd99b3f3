package org.glintery.exchange.legend;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.glintery.exchange.csv.CsvRow;
import org.glintery.exchange.csv.CsvRows;
import org.openide.util.NbBundle.Messages;

/** What stands between the cells of a table. The first wins where two fit equally well. */
@Messages({"Separator.tabs=tabs", "Separator.semicolons=semicolons", "Separator.commas=commas", "Separator.bars=bars"})
enum Separator {
    TAB('\t', Bundle.Separator_tabs()),
    SEMICOLON(';', Bundle.Separator_semicolons()),
    COMMA(',', Bundle.Separator_commas()),
    BAR('|', Bundle.Separator_bars());

    private static final int MOST_ROWS = 20;
    private static final int MOST_CELLS = 1_000;

    private final char sign;
    private final String words;

    Separator(char sign, String words) {
        this.sign = sign;
        this.words = words;
    }

    char sign() {
        return sign;
    }

    String words() {
        return words;
    }

    /** What a first line such as {@code sep=;} says; some spreadsheets write and read it. */
    static Optional<Separator> saidBy(String firstLine) {
        String line = firstLine.strip();
        return Arrays.stream(values())
                .filter(separator ->
                        line.equalsIgnoreCase("sep=" + separator.sign) || line.equals("sep=" + separator.sign))
                .findFirst();
    }

    /** The one that divides most of the first rows into the same number of cells; commas where none does. */
    static Separator of(String sample) {
        return Arrays.stream(values())
                .max(Comparator.comparingLong((Separator separator) -> separator.score(sample))
                        .thenComparing(Comparator.<Separator>naturalOrder().reversed()))
                .filter(separator -> separator.score(sample) > 0)
                .orElse(COMMA);
    }

    /**
     * How many rows have the commonest number of cells, rows of one cell not counted; then how many cells that is. So a
     * comma in a decimal number or a name does not win over a semicolon.
     */
    private long score(String sample) {
        List<Integer> widths = widths(sample);
        long best = 0;
        for (int width : widths) {
            long alike = widths.stream().filter(other -> other == width).count();
            best = width < 2 ? best : Math.max(best, alike * MOST_CELLS + width);
        }
        return best;
    }

    /** How many cells each of the first rows would have; a sample may end within a row. */
    private List<Integer> widths(String sample) {
        List<Integer> widths = new ArrayList<>();
        try (var rows = new CsvRows(new StringReader(sample), sign, MOST_CELLS, sample.length() + 1)) {
            Optional<CsvRow> row = rows.next();
            while (row.isPresent() && widths.size() < MOST_ROWS) {
                if (!row.get().isBlank()) {
                    widths.add(row.get().cells().size());
                }
                row = rows.next();
            }
        } catch (IOException e) {
            // What was read until here is all there is to judge by.
            return widths;
        }
        return widths;
    }
}
