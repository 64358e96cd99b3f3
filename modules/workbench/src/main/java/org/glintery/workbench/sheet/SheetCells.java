package org.glintery.workbench.sheet;

import java.util.Arrays;
import java.util.BitSet;
import org.glintery.api.Preview;

/**
 * Which line of its legend lies in each cell of a chart. Immutable; any thread.
 *
 * <p>A cell's index is {@code row * columns + column}; sets of cells are bit sets over these indexes.
 */
@Preview(since = "1.0")
public final class SheetCells {
    /** What {@link #line} answers for a cell that takes no drill. */
    public static final int NO_DRILL = -1;

    /** The largest chart, in cells. */
    public static final int MOST_CELLS = 4_000_000;

    private final int columns;
    private final int rows;
    private final short[] lines;

    private SheetCells(int columns, int rows, short[] lines) {
        this.columns = columns;
        this.rows = rows;
        this.lines = lines;
    }

    /**
     * Cells by rows.
     *
     * @param lines {@code columns * rows} line indexes from 0, or {@link #NO_DRILL}; copied
     * @throws IllegalArgumentException when the sizes do not fit together or are out of bounds
     */
    public static SheetCells of(int columns, int rows, short[] lines) {
        if (columns < 1 || rows < 1 || (long) columns * rows > MOST_CELLS || lines.length != columns * rows) {
            throw new IllegalArgumentException(columns + " x " + rows + " cells, " + lines.length + " given");
        }
        return new SheetCells(columns, rows, lines.clone());
    }

    public int columns() {
        return columns;
    }

    public int rows() {
        return rows;
    }

    public int count() {
        return lines.length;
    }

    /** The line at an index, or {@link #NO_DRILL}. */
    public int line(int index) {
        return lines[index];
    }

    /** Whether a column and a row are on the chart. */
    public boolean holds(int column, int row) {
        return column >= 0 && row >= 0 && column < columns && row < rows;
    }

    /** The same chart with one line in all the given cells. */
    public SheetCells painted(BitSet cells, int line) {
        short[] next = lines.clone();
        for (int cell = cells.nextSetBit(0); cell >= 0 && cell < next.length; cell = cells.nextSetBit(cell + 1)) {
            next[cell] = (short) line;
        }
        return new SheetCells(columns, rows, next);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SheetCells cells && cells.columns == columns && Arrays.equals(cells.lines, lines);
    }

    @Override
    public int hashCode() {
        return 31 * columns + Arrays.hashCode(lines);
    }

    /** For painting only: not to be written to. */
    short[] raw() {
        return lines;
    }
}
