package org.glintery.exchange.csv;

import java.util.List;

/**
 * One row of a file.
 *
 * @param line of the file on which it begins, from 1
 */
public record CsvRow(int line, List<String> cells) {
    public CsvRow {
        cells = List.copyOf(cells);
    }

    public boolean isBlank() {
        return cells.stream().allMatch(String::isBlank);
    }

    /** A cell without blanks around it; empty beyond the last. */
    public String cell(int place) {
        return place < cells.size() ? cells.get(place).strip() : "";
    }
}
