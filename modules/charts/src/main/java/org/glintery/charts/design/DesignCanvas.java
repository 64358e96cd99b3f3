package org.glintery.charts.design;

import java.util.Optional;
import java.util.stream.IntStream;
import org.glintery.api.charts.Design;
import org.glintery.api.charts.DesignCells;
import org.glintery.api.charts.Grid;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Piece;

/** What a design says of a piece's canvas, where the piece does not say it already. Pure; any thread. */
final class DesignCanvas {

    private DesignCanvas() {}

    static Piece on(Piece piece, Design design, DesignCells cells) {
        Coverage coverage = piece.coverage() == Coverage.NOT_SAID ? coverage(cells) : piece.coverage();
        Optional<Shape> shape = piece.drillShape().or(() -> shape(design));
        return new Piece(
                piece.title(),
                piece.kit(),
                piece.madeAgainFrom(),
                piece.standing(),
                piece.standingSince(),
                coverage,
                shape,
                filled(piece.canvas(), design.grid()),
                piece.sections(),
                piece.pictures(),
                piece.keptAt(),
                piece.story());
    }

    private static Canvas filled(Canvas canvas, Grid grid) {
        return new Canvas(
                canvas.drilledWidthMm().or(() -> Optional.of(grid.widthMm())),
                canvas.drilledHeightMm().or(() -> Optional.of(grid.heightMm())),
                canvas.clothWidthMm(),
                canvas.clothHeightMm(),
                canvas.pitchMm().or(() -> Optional.of(grid.pitchMm())),
                Optional.of(grid.columns()),
                Optional.of(grid.rows()));
    }

    private static Coverage coverage(DesignCells cells) {
        return IntStream.range(0, cells.count()).allMatch(cell -> cells.line(cell) >= 0)
                ? Coverage.FULL
                : Coverage.PARTIAL;
    }

    /** When all of them have it. */
    private static Optional<Shape> shape(Design design) {
        return design.lines().stream()
                .map(line -> line.drill().shape())
                .distinct()
                .reduce((one, other) -> Shape.SPECIAL)
                .filter(shape -> shape != Shape.SPECIAL);
    }
}
