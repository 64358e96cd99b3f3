package org.glintery.api.charts;

import java.util.List;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Preview;
import org.glintery.api.workshop.ByName;
import org.glintery.api.workshop.DocumentType;

/**
 * Some rows of a design: which line lies in each cell. The document's id follows from the design's and the first row.
 *
 * @param rows from left to right the line of each cell, {@code -} for none, {@code *} and a number where several follow: {@code 3*12 - 0
 *     7*2}
 */
@Preview(since = "1.0")
public record CellBand(UUID design, int firstRow, List<String> rows) {

    public static final DocumentType<CellBand> TYPE = DocumentType.of("charts", "cells", CellBand.class);

    /** So many cells, or one row, are in one document: a stroke then writes some kilobytes. */
    private static final int CELLS_A_BAND = 8_000;

    /** @throws IllegalArgumentException when a row is not written so */
    public CellBand {
        rows = rows.stream().map(PlainText::line).toList();
        rows.forEach(row -> CellRuns.readLines(row, (line, count) -> {}));
    }

    public static UUID idOf(UUID design, int firstRow) {
        return ByName.idFor(TYPE, design + "/" + firstRow);
    }

    /** How many rows of a grid are in one document. */
    public static int rowsABand(int columns) {
        return Math.max(1, CELLS_A_BAND / columns);
    }
}
