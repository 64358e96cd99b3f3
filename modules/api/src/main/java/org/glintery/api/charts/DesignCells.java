package org.glintery.api.charts;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Preview;
import org.glintery.api.workshop.View;

/**
 * What lies in the cells of a design, and which of them are laid. Immutable; any thread.
 *
 * <p>A cell's index is {@code row * columns + column}; sets of cells are bit sets over these indexes.
 */
@Preview(since = "1.0")
public final class DesignCells {
    private final int columns;
    private final int rows;
    private final short[] lines;
    private final BitSet laid;

    private DesignCells(int columns, int rows, short[] lines, BitSet laid) {
        this.columns = columns;
        this.rows = rows;
        this.lines = lines;
        this.laid = laid;
    }

    /** The cells of a chart, of which nothing is laid. */
    public static DesignCells of(Chart chart) {
        Grid grid = chart.grid();
        short[] lines = new short[grid.cells()];
        for (int cell = 0; cell < lines.length; cell++) {
            lines[cell] = (short) chart.line(cell % grid.columns(), cell / grid.columns());
        }
        return new DesignCells(grid.columns(), grid.rows(), lines, new BitSet());
    }

    /** Those of a design that is kept; empty when it is not. Where its cells are missing it is bare. Kept with the view. */
    public static Optional<DesignCells> of(View view, UUID design) {
        return view.derived(new ReadCells(design));
    }

    /** @param lines of each cell its line or {@link Chart#NO_DRILL}; copied @param laid copied */
    static DesignCells of(Grid grid, short[] lines, BitSet laid) {
        return new DesignCells(grid.columns(), grid.rows(), lines.clone(), (BitSet) laid.clone());
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

    /** The line of a cell, or {@link Chart#NO_DRILL}. */
    public int line(int cell) {
        return lines[cell];
    }

    public boolean isLaid(int cell) {
        return laid.get(cell);
    }

    /** A copy of the lines of all cells. */
    public short[] lines() {
        return lines.clone();
    }

    /** A copy of the set of laid cells. */
    public BitSet laid() {
        return (BitSet) laid.clone();
    }

    /** How many cells have each line. @param count of lines */
    public long[] drills(int count) {
        long[] drills = new long[count];
        for (short line : lines) {
            if (line >= 0 && line < count) {
                drills[line]++;
            }
        }
        return drills;
    }

    /** How many laid cells have each line. @param count of lines */
    public long[] laidDrills(int count) {
        long[] drills = new long[count];
        laid.stream().map(cell -> lines[cell]).filter(line -> line < count).forEach(line -> drills[line]++);
        return drills;
    }

    /** The same with one line in some cells; those of them that had another are no longer laid. */
    public DesignCells painted(BitSet cells, int line) {
        short[] next = lines.clone();
        BitSet stillLaid = laid();
        cells.stream().filter(cell -> cell < next.length && next[cell] != line).forEach(cell -> {
            next[cell] = (short) line;
            stillLaid.clear(cell);
        });
        return new DesignCells(columns, rows, next, stillLaid);
    }

    /** The same with some cells laid or not; a cell without a drill is never laid. */
    public DesignCells marked(BitSet cells, boolean asLaid) {
        BitSet next = laid();
        cells.stream().filter(cell -> cell < lines.length && lines[cell] >= 0).forEach(cell -> next.set(cell, asLaid));
        return new DesignCells(columns, rows, lines, next);
    }

    /** The rows at which its documents begin. */
    public List<Integer> bands() {
        List<Integer> firstRows = new ArrayList<>();
        for (int row = 0; row < rows; row += CellBand.rowsABand(columns)) {
            firstRows.add(row);
        }
        return firstRows;
    }

    /** The document of the rows from there. */
    public CellBand band(UUID design, int firstRow) {
        List<String> texts = new ArrayList<>();
        for (int row = firstRow; row < endOf(firstRow); row++) {
            texts.add(CellRuns.ofLines(lines, row * columns, (row + 1) * columns));
        }
        return new CellBand(design, firstRow, texts);
    }

    /** The document of what is laid in the rows from there; empty when nothing is. */
    public Optional<LaidBand> laidBand(UUID design, int firstRow) {
        int next = laid.nextSetBit(firstRow * columns);
        if (next < 0 || next >= endOf(firstRow) * columns) {
            return Optional.empty();
        }
        List<String> texts = new ArrayList<>();
        for (int row = firstRow; row < endOf(firstRow); row++) {
            texts.add(CellRuns.ofColumns(laid, row * columns, (row + 1) * columns));
        }
        return Optional.of(new LaidBand(design, firstRow, texts));
    }

    private int endOf(int firstRow) {
        return Math.min(rows, firstRow + CellBand.rowsABand(columns));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof DesignCells cells
                && cells.columns == columns
                && Arrays.equals(cells.lines, lines)
                && cells.laid.equals(laid);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(lines) + laid.hashCode();
    }
}
