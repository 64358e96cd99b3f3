package org.glintery.api.charts;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.workshop.Derived;
import org.glintery.api.workshop.View;

/** The cells of a design from its documents. What does not fit the grid or the lines counts as bare: a chart must open. */
record ReadCells(UUID design) implements Derived<Optional<DesignCells>> {

    @Override
    public Optional<DesignCells> from(View view) {
        return view.find(Design.TYPE, design).map(stored -> read(view, stored.value()));
    }

    private DesignCells read(View view, Design kept) {
        Grid grid = kept.grid();
        short[] lines = new short[grid.cells()];
        Arrays.fill(lines, (short) Chart.NO_DRILL);
        BitSet laid = new BitSet(lines.length);
        int step = CellBand.rowsABand(grid.columns());
        for (int row = 0; row < grid.rows(); row += step) {
            int rows = Math.min(step, grid.rows() - row);
            int from = row;
            view.find(CellBand.TYPE, CellBand.idOf(design, row))
                    .ifPresent(band -> lay(first(band.value().rows(), rows), from, kept, lines));
            view.find(LaidBand.TYPE, LaidBand.idOf(design, row))
                    .ifPresent(band -> mark(first(band.value().rows(), rows), from, grid.columns(), laid));
        }
        laid.stream().filter(cell -> lines[cell] < 0).forEach(laid::clear);
        return DesignCells.of(grid, lines, laid);
    }

    private static List<String> first(List<String> texts, int most) {
        return texts.subList(0, Math.min(most, texts.size()));
    }

    private static void lay(List<String> texts, int firstRow, Design kept, short[] lines) {
        int columns = kept.grid().columns();
        int[] at = new int[1];
        for (int row = 0; row < texts.size(); row++) {
            int start = (firstRow + row) * columns;
            int end = start + columns;
            at[0] = start;
            CellRuns.readLines(texts.get(row), (line, count) -> {
                int to = Math.min(end, at[0] + count);
                if (line >= 0 && line < kept.lines().size()) {
                    Arrays.fill(lines, at[0], to, (short) line);
                }
                at[0] = to;
            });
        }
    }

    private static void mark(List<String> texts, int firstRow, int columns, BitSet laid) {
        for (int row = 0; row < texts.size(); row++) {
            int start = (firstRow + row) * columns;
            CellRuns.readColumns(texts.get(row), (first, last) -> {
                if (first <= last && first < columns) {
                    laid.set(start + first, start + Math.min(last, columns - 1) + 1);
                }
            });
        }
    }
}
