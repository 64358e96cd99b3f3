package org.glintery.exchange.csv;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Writes rows as RFC 4180 has them, in UTF-8 with a mark: without the mark the commonest spreadsheet takes the file for the
 * system's own encoding and spoils every letter beyond English. Not safe for use by several threads.
 */
public final class CsvSheet {
    private final Writer writer;

    /** Leaves the stream open. */
    public CsvSheet(OutputStream out) throws IOException {
        writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        writer.write('\uFEFF');
    }

    public void row(List<String> cells) throws IOException {
        for (int i = 0; i < cells.size(); i++) {
            if (i > 0) {
                writer.write(',');
            }
            writer.write(quoted(cells.get(i)));
        }
        writer.write("\r\n");
    }

    /** Hands everything to the stream. */
    public void flush() throws IOException {
        writer.flush();
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().allMatch(c -> c != '"' && c != ',' && c != ';' && c > ' ' || c == ' ')
                && cell.equals(cell.strip());
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
