package org.glintery.colour;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The rows of a check file, without its heading. */
final class CsvRows {

    private CsvRows() {}

    static List<String[]> of(String file) throws IOException {
        try (InputStream in = CsvRows.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(line -> line.split(","))
                    .toList();
        }
    }
}
