package org.glintery.colour;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The tables that come with this package: comma-separated, one heading, a name in quotes where it has commas. */
final class Table {

    private Table() {}

    /** The rows below the heading. */
    static List<String[]> rows(String file) {
        try (InputStream in = Table.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("missing from this module: " + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(Table::cells)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file, e);
        }
    }

    private static String[] cells(String line) {
        String[] cells = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
        for (int i = 0; i < cells.length; i++) {
            cells[i] = cells[i].replace("\"", "");
        }
        return cells;
    }
}
