package org.glintery.workbench.sheet;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.BitSet;
import org.glintery.api.Preview;

/** Which cells somebody means: by box, lasso, colour or connected patch. Pure; any thread. */
@Preview(since = "1.0")
public final class CellSets {
    private CellSets() {}

    /** The cells between two corners, both included; corners off the chart are moved to its edge. */
    public static BitSet box(SheetCells cells, int column, int row, int otherColumn, int otherRow) {
        int left = clamp(Math.min(column, otherColumn), cells.columns());
        int right = clamp(Math.max(column, otherColumn), cells.columns());
        int top = clamp(Math.min(row, otherRow), cells.rows());
        int bottom = clamp(Math.max(row, otherRow), cells.rows());
        BitSet box = new BitSet(cells.count());
        for (int r = top; r <= bottom; r++) {
            box.set(r * cells.columns() + left, r * cells.columns() + right + 1);
        }
        return box;
    }

    /** The cells whose middle lies inside a closed path, given in cells from the upper left corner of the chart. */
    public static BitSet lasso(SheetCells cells, Path2D path) {
        Rectangle2D bounds = path.getBounds2D();
        BitSet inside = new BitSet(cells.count());
        int right = clamp((int) Math.ceil(bounds.getMaxX()), cells.columns());
        int bottom = clamp((int) Math.ceil(bounds.getMaxY()), cells.rows());
        for (int row = clamp((int) bounds.getMinY(), cells.rows()); row <= bottom; row++) {
            for (int column = clamp((int) bounds.getMinX(), cells.columns()); column <= right; column++) {
                if (path.contains(column + 0.5, row + 0.5)) {
                    inside.set(row * cells.columns() + column);
                }
            }
        }
        return inside;
    }

    /** All cells of a line. */
    public static BitSet colour(SheetCells cells, int line) {
        BitSet same = new BitSet(cells.count());
        for (int cell = 0; cell < cells.count(); cell++) {
            if (cells.line(cell) == line) {
                same.set(cell);
            }
        }
        return same;
    }

    /** The cells of the same line that hang together with a cell by their sides. */
    public static BitSet patch(SheetCells cells, int cell) {
        int line = cells.line(cell);
        BitSet patch = new BitSet(cells.count());
        int[] waiting = new int[cells.count()];
        int count = 0;
        patch.set(cell);
        waiting[count++] = cell;
        while (count > 0) {
            int here = waiting[--count];
            int column = here % cells.columns();
            int[] beside = {
                column > 0 ? here - 1 : here,
                column < cells.columns() - 1 ? here + 1 : here,
                here - cells.columns(),
                here + cells.columns()
            };
            for (int next : beside) {
                if (next >= 0 && next < cells.count() && cells.line(next) == line && !patch.get(next)) {
                    patch.set(next);
                    waiting[count++] = next;
                }
            }
        }
        return patch;
    }

    /** The cells on a straight line between two, so that a quick stroke leaves no gaps. */
    public static BitSet stroke(SheetCells cells, int column, int row, int otherColumn, int otherRow) {
        BitSet stroke = new BitSet(cells.count());
        int steps = Math.max(1, Math.max(Math.abs(otherColumn - column), Math.abs(otherRow - row)));
        for (int step = 0; step <= steps; step++) {
            int c = column + Math.round((otherColumn - column) * (float) step / steps);
            int r = row + Math.round((otherRow - row) * (float) step / steps);
            if (cells.holds(c, r)) {
                stroke.set(r * cells.columns() + c);
            }
        }
        return stroke;
    }

    private static int clamp(int place, int count) {
        return Math.max(0, Math.min(count - 1, place));
    }
}
