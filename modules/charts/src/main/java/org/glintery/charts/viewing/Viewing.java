package org.glintery.charts.viewing;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * Sees a grid from a distance: each cell becomes the average of what lies around it, by a Gaussian of 1.5 cells with
 * mirrored edges. At a pitch of 2.5 mm seen from 3 m that is an angle of 4.3 minutes of arc.
 */
public final class Viewing {

    public static final double SIGMA_CELLS = 1.5;

    private final FoldedGaussian across;
    private final FoldedGaussian down;

    /** @param reach of the Gaussian in cells */
    public Viewing(int columns, int rows, int reach) {
        across = new FoldedGaussian(columns, SIGMA_CELLS, reach);
        down = new FoldedGaussian(rows, SIGMA_CELLS, reach);
    }

    public FoldedGaussian across() {
        return across;
    }

    public FoldedGaussian down() {
        return down;
    }

    /** What is seen of a value a cell, such as its red light. */
    public double[] seen(double[] values) {
        return gathered(values, weight -> weight, false);
    }

    /** For each cell the sum of what all others see of it, each weighted once more by what it sees: for squares. */
    public double[] squaresHandedBack(double[] values) {
        return gathered(values, weight -> weight * weight, true);
    }

    private double[] gathered(double[] values, DoubleUnaryOperator weight, boolean back) {
        int columns = across.cells();
        double[] rowwise = new double[values.length];
        double[] both = new double[values.length];
        IntStream.range(0, down.cells()).parallel().forEach(row -> {
            for (int x = 0; x < columns; x++) {
                double sum = 0;
                for (int of = across.first(x); of <= across.last(x); of++) {
                    double seen = back ? across.weight(of, x) : across.weight(x, of);
                    sum += weight.applyAsDouble(seen) * values[row * columns + of];
                }
                rowwise[row * columns + x] = sum;
            }
        });
        IntStream.range(0, down.cells()).parallel().forEach(row -> {
            for (int of = down.first(row); of <= down.last(row); of++) {
                double seen = weight.applyAsDouble(back ? down.weight(of, row) : down.weight(row, of));
                for (int x = 0; x < columns; x++) {
                    both[row * columns + x] += seen * rowwise[of * columns + x];
                }
            }
        });
        return both;
    }
}
