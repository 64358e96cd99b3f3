package org.glintery.api.charts;

import java.util.List;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Preview;
import org.glintery.api.workshop.ByName;
import org.glintery.api.workshop.DocumentType;

/**
 * Some rows of a design: which cells are laid. There is none where no cell is. The document's id follows from the design's
 * and the first row; it has the rows of the {@link CellBand} with the same.
 *
 * @param rows the columns that are laid, from 0: {@code 4 10-32}
 */
@Preview(since = "1.0")
public record LaidBand(UUID design, int firstRow, List<String> rows) {

    public static final DocumentType<LaidBand> TYPE = DocumentType.of("charts", "laid", LaidBand.class);

    /** @throws IllegalArgumentException when a row is not written so */
    public LaidBand {
        rows = rows.stream().map(PlainText::line).toList();
        rows.forEach(row -> CellRuns.readColumns(row, (first, last) -> {}));
    }

    public static UUID idOf(UUID design, int firstRow) {
        return ByName.idFor(TYPE, design + "/" + firstRow);
    }
}
