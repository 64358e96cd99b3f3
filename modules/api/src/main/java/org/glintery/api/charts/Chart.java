package org.glintery.api.charts;

import java.util.List;
import org.glintery.api.Stable;

/** What is laid where: lines, and for each cell the place of its line. Immutable. */
@Stable
public final class Chart {

    /** Stands for a cell without a drill. */
    public static final int NO_DRILL = -1;

    public static final int MOST_LINES = 1_000;

    private final Grid grid;
    private final List<ChartLine> lines;
    private final short[] cells;

    /**
     * @param cells row after row the place of a line, or {@link #NO_DRILL}; copied
     * @throws IllegalArgumentException when cells and grid do not fit, or a cell has a line that is not there
     */
    public Chart(Grid grid, List<ChartLine> lines, int[] cells) {
        if (cells.length != grid.cells() || lines.size() > MOST_LINES) {
            throw new IllegalArgumentException(cells.length + " cells, " + lines.size() + " lines on " + grid);
        }
        this.grid = grid;
        this.lines = List.copyOf(lines);
        this.cells = new short[cells.length];
        for (int cell = 0; cell < cells.length; cell++) {
            if (cells[cell] < NO_DRILL || cells[cell] >= lines.size()) {
                throw new IllegalArgumentException("no line " + cells[cell]);
            }
            this.cells[cell] = (short) cells[cell];
        }
    }

    public Grid grid() {
        return grid;
    }

    public List<ChartLine> lines() {
        return lines;
    }

    /** The place of the cell's line, or {@link #NO_DRILL}. */
    public int line(int column, int row) {
        return cells[row * grid.columns() + column];
    }

    /** Cells that have a drill. */
    public long drills() {
        return lines.stream().mapToLong(ChartLine::drills).sum();
    }
}
