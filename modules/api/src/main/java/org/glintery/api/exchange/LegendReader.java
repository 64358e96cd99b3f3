package org.glintery.api.exchange;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.Preview;
import org.glintery.api.Result;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Source;

/** Reads legends from CSV, or pasted from a spreadsheet. Pure but for reading the file. */
@Preview(since = "1.0")
public interface LegendReader {

    /**
     * Refused with {@code unreadable}, {@code not-a-legend} when it is no text or no column can be made out, {@code too-long}
     * beyond 1 000 lines or {@code too-large} beyond 1 MiB of text or a file of 64 MiB. Disk; not on the event thread.
     */
    Result<Reading> read(Path file, Assumed assumed);

    Result<Reading> readText(String text, Assumed assumed);

    /**
     * What holds where the file is silent.
     *
     * @param card the card its codes are of
     * @param shape of its drills
     * @param drillsPerBag what a bag of its source holds
     */
    record Assumed(String card, Optional<Shape> shape, int drillsPerBag) {

        /** Where nothing is known of the source's bags. */
        public Assumed(String card, Optional<Shape> shape) {
            this(card, shape, Source.USUAL_DRILLS_PER_BAG);
        }
    }

    /**
     * What was understood. Nothing is imported while there are bad rows.
     *
     * @param columns header in the file to what it was taken for; "a note" for extra columns
     * @param entries code to name and colour
     * @param badRows each with its line in the file and the reason
     * @param warnings plain sentences, such as a repeated symbol
     * @param encoding of the file, in words
     * @param separator of the file, in words
     */
    record Reading(
            Map<String, String> columns,
            List<LegendLine> lines,
            Map<String, CardEntry> entries,
            List<BadRow> badRows,
            List<String> warnings,
            String encoding,
            String separator) {
        public Reading {
            columns = Collections.unmodifiableMap(new LinkedHashMap<>(columns));
            lines = List.copyOf(lines);
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
            badRows = List.copyOf(badRows);
            warnings = List.copyOf(warnings);
        }
    }

    record BadRow(int line, String reason) {}
}
