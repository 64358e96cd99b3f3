package org.glintery.exchange.legend;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.exchange.LegendReader.Assumed;
import org.glintery.api.exchange.LegendReader.BadRow;
import org.glintery.api.exchange.LegendReader.Reading;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.Legend;
import org.glintery.exchange.csv.BrokenRowException;
import org.glintery.exchange.csv.CsvRow;
import org.glintery.exchange.csv.CsvRows;
import org.openide.util.NbBundle.Messages;

/**
 * The rows of one legend as they stand in its file, blank ones left out; at most as many as a legend can hold.
 *
 * @param broken where they could be read no further
 */
@Messages({
    "LegendRows.empty=This file holds no rows. Nothing was imported.",
    "LegendRows.noColumns=No column of this file is a symbol or a code. Nothing was imported; give the columns headers such as symbol, code, name, needed.",
    "# {0} - most rows",
    "LegendRows.tooLong=This file has more than {0} rows, more than a legend can hold. Nothing was imported.",
    "LegendRows.tooMuch=This file holds more than 1 MiB of text, more than a legend can hold. Nothing was imported; take out columns that are not needed.",
    "# {0} - line",
    "LegendRows.broken=This file can''t be read from line {0} on: a quotation mark is missing or one too many. Nothing was imported.",
    "LegendRows.rowBroken=a quotation mark is missing or one too many, and nothing after it could be read"
})
record LegendRows(List<CsvRow> rows, Optional<BadRow> broken, long characters) {
    /** A title and a header may come before the lines. */
    private static final int MOST_ROWS_ABOVE = 10;

    private static final int MOST_COLUMNS = 200;
    private static final int LONGEST_CELL = 100_000;
    private static final long MOST_CHARACTERS = 1L << 20;

    /** Refused with {@code not-a-legend}, {@code too-long} or {@code too-large}. */
    static Result<Reading> read(LegendText text, String encoding, Assumed assumed) throws IOException {
        if (text.isBinary()) {
            return Result.refused("not-a-legend", Bundle.CsvLegendReader_notText());
        }
        LegendRows read = of(text);
        if (read.rows.size() > Legend.MOST_LINES + MOST_ROWS_ABOVE) {
            return tooLong();
        }
        if (read.characters > MOST_CHARACTERS) {
            return Result.refused("too-large", Bundle.LegendRows_tooMuch());
        }
        return read.understood(assumed, encoding, text.separator().words());
    }

    private static LegendRows of(LegendText text) throws IOException {
        List<CsvRow> rows = new ArrayList<>();
        long characters = 0;
        try (var csv = new CsvRows(text.reader(), text.separator().sign(), MOST_COLUMNS, LONGEST_CELL)) {
            Optional<CsvRow> row = csv.next();
            while (row.isPresent()
                    && rows.size() <= Legend.MOST_LINES + MOST_ROWS_ABOVE
                    && characters <= MOST_CHARACTERS) {
                if (!row.get().isBlank()) {
                    rows.add(new CsvRow(
                            row.get().line() + text.linesSkipped(), row.get().cells()));
                    characters +=
                            row.get().cells().stream().mapToLong(String::length).sum();
                }
                row = csv.next();
            }
            return new LegendRows(rows, Optional.empty(), characters);
        } catch (BrokenRowException e) {
            return new LegendRows(
                    rows,
                    Optional.of(new BadRow(e.line() + text.linesSkipped(), Bundle.LegendRows_rowBroken())),
                    characters);
        }
    }

    private Result<Reading> understood(Assumed assumed, String encoding, String separator) {
        if (rows.isEmpty() && broken.isEmpty()) {
            return Result.refused("not-a-legend", Bundle.LegendRows_empty());
        }
        Columns columns = Columns.of(rows);
        if (!columns.nameALine()) {
            return Result.refused(
                    "not-a-legend",
                    broken.map(row -> Bundle.LegendRows_broken(String.valueOf(row.line())))
                            .orElse(Bundle.LegendRows_noColumns()));
        }
        if (rows.size() - columns.headerRows() > Legend.MOST_LINES) {
            return tooLong();
        }
        var table = new LegendTable(columns, rows, assumed);
        List<BadRow> badRows = new ArrayList<>(table.badRows());
        broken.ifPresent(badRows::add);
        return Result.ok(new Reading(
                columns.told(),
                List.copyOf(table.lines()),
                table.entries(),
                List.copyOf(badRows),
                table.warnings(),
                encoding,
                separator));
    }

    private static Result<Reading> tooLong() {
        return Result.refused("too-long", Bundle.LegendRows_tooLong(Balance.grouped(Legend.MOST_LINES)));
    }
}
