package org.glintery.workbench.sheet;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.glintery.colour.LinearRgb;
import org.glintery.colour.Srgb;

/**
 * A chart in ever coarser steps, for views in which a cell is smaller than a pixel: each step has half the columns and
 * rows of the one before, and each of its cells the mean of four, taken in linear light. Immutable; any thread.
 */
final class Overview {
    private static final int ENCODED_STEPS = 4096;
    private static final float[] LIGHT = new float[256];
    private static final byte[] ENCODED = new byte[ENCODED_STEPS + 1];

    static {
        for (int value = 0; value < LIGHT.length; value++) {
            LIGHT[value] = (float) new Srgb(value, value, value).linear().red();
        }
        for (int step = 0; step <= ENCODED_STEPS; step++) {
            double light = step / (double) ENCODED_STEPS;
            ENCODED[step] = (byte) new LinearRgb(light, light, light).srgb().red();
        }
    }

    private final List<Step> steps;

    private Overview(List<Step> steps) {
        this.steps = List.copyOf(steps);
    }

    /**
     * One coarseness: {@code columns * rows} colours as 0xRRGGBB.
     *
     * @param shift cells of the chart a side, as a power of two: column and row {@code >> shift} give the place here
     */
    record Step(int shift, int columns, int rows, int[] rgb) {}

    /**
     * All steps down to a single cell.
     *
     * @param lineRgb a colour for each line, as 0xRRGGBB
     * @param groundRgb the colour of cells without a drill
     */
    static Overview of(SheetCells cells, int[] lineRgb, int groundRgb) {
        int[] flat = new int[cells.count()];
        for (int i = 0; i < flat.length; i++) {
            int line = cells.line(i);
            flat[i] = line < 0 ? groundRgb : lineRgb[line];
        }
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(0, cells.columns(), cells.rows(), flat));
        while (last(steps).columns > 1 || last(steps).rows > 1) {
            Step fine = last(steps);
            Step coarse = half(fine);
            for (int row = 0; row < coarse.rows; row++) {
                for (int column = 0; column < coarse.columns; column++) {
                    coarse.rgb[row * coarse.columns + column] = mean(fine, column, row);
                }
            }
            steps.add(coarse);
        }
        return new Overview(steps);
    }

    /** The same with some cells changed; only what they touch is worked out again. */
    Overview changed(SheetCells cells, BitSet which, int[] lineRgb, int groundRgb) {
        List<Step> next = new ArrayList<>();
        for (Step step : steps) {
            next.add(new Step(step.shift, step.columns, step.rows, step.rgb.clone()));
        }
        Step flat = next.get(0);
        BitSet touched = which;
        for (int cell = which.nextSetBit(0); cell >= 0; cell = which.nextSetBit(cell + 1)) {
            int line = cells.line(cell);
            flat.rgb[cell] = line < 0 ? groundRgb : lineRgb[line];
        }
        for (int i = 1; i < next.size(); i++) {
            touched = again(next.get(i - 1), next.get(i), touched);
        }
        return new Overview(next);
    }

    private static BitSet again(Step fine, Step coarse, BitSet touched) {
        BitSet above = new BitSet(coarse.rgb.length);
        for (int cell = touched.nextSetBit(0); cell >= 0; cell = touched.nextSetBit(cell + 1)) {
            above.set(cell / fine.columns / 2 * coarse.columns + cell % fine.columns / 2);
        }
        for (int cell = above.nextSetBit(0); cell >= 0; cell = above.nextSetBit(cell + 1)) {
            coarse.rgb[cell] = mean(fine, cell % coarse.columns, cell / coarse.columns);
        }
        return above;
    }

    /** The step whose cells come nearest to a pixel. */
    Step forCellPx(double cellPx) {
        int step = cellPx >= 1 ? 0 : (int) Math.round(Math.log(1 / cellPx) / Math.log(2));
        return steps.get(Math.min(step, steps.size() - 1));
    }

    /** The finest step: a colour a cell. */
    Step flat() {
        return steps.get(0);
    }

    private static Step last(List<Step> steps) {
        return steps.get(steps.size() - 1);
    }

    private static Step half(Step fine) {
        int columns = (fine.columns + 1) / 2;
        int rows = (fine.rows + 1) / 2;
        return new Step(fine.shift + 1, columns, rows, new int[columns * rows]);
    }

    private static int mean(Step fine, int column, int row) {
        int right = Math.min(2 * column + 1, fine.columns - 1);
        int below = Math.min(2 * row + 1, fine.rows - 1) * fine.columns;
        int here = 2 * row * fine.columns;
        int a = fine.rgb[here + 2 * column];
        int b = fine.rgb[here + right];
        int c = fine.rgb[below + 2 * column];
        int d = fine.rgb[below + right];
        return a == b && b == c && c == d
                ? a
                : channel(a, b, c, d, 16) | channel(a, b, c, d, 8) | channel(a, b, c, d, 0);
    }

    private static int channel(int a, int b, int c, int d, int shift) {
        float light = LIGHT[a >> shift & 0xFF]
                + LIGHT[b >> shift & 0xFF]
                + LIGHT[c >> shift & 0xFF]
                + LIGHT[d >> shift & 0xFF];
        return (ENCODED[Math.round(light / 4 * ENCODED_STEPS)] & 0xFF) << shift;
    }
}
