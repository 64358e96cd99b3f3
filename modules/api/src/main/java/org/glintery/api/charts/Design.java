package org.glintery.api.charts;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Preview;
import org.glintery.api.workshop.DocumentType;

/**
 * A chart that is kept. What lies in its cells is in documents of their own, {@link CellBand} and {@link LaidBand}, so that a
 * stroke writes little: {@link DesignCells} reads them together.
 *
 * @param piece that is made after it
 * @param lines in the order in which the cells count them
 */
@Preview(since = "1.0")
public record Design(
        String title, Optional<UUID> piece, Grid grid, List<DesignLine> lines, Optional<DesignPicture> picture) {

    public static final DocumentType<Design> TYPE = DocumentType.of("charts", "design", Design.class);

    public Design {
        title = PlainText.line(title);
        lines = List.copyOf(lines);
    }

    public Design withTitle(String newTitle) {
        return new Design(newTitle, piece, grid, lines, picture);
    }

    public Design withPiece(Optional<UUID> newPiece) {
        return new Design(title, newPiece, grid, lines, picture);
    }

    public Design withLines(List<DesignLine> newLines) {
        return new Design(title, piece, grid, newLines, picture);
    }
}
