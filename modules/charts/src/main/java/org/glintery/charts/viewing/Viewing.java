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
        double[][] ofColumns = weights(across, weight, back);
        double[][] ofRows = weights(down, weight, back);
        double[] rowwise = new double[values.length];
        double[] both = new double[values.length];
        IntStream.range(0, down.cells()).parallel().forEach(row -> {
            for (int x = 0; x < columns; x++) {
                double[] seen = ofColumns[x];
                int first = row * columns + across.first(x);
                double sum = 0;
                for (int i = 0; i < seen.length; i++) {
                    sum += seen[i] * values[first + i];
                }
                rowwise[row * columns + x] = sum;
            }
        });
        IntStream.range(0, down.cells()).parallel().forEach(row -> {
            int first = down.first(row);
            int to = row * columns;
            for (int i = 0; i < ofRows[row].length; i++) {
                double seen = ofRows[row][i];
                int from = (first + i) * columns;
                for (int x = 0; x < columns; x++) {
                    both[to + x] += seen * rowwise[from + x];
                }
            }
        });
        return both;
    }

    /** By the cell that gathers, for the cells from its first to its last. */
    private static double[][] weights(FoldedGaussian side, DoubleUnaryOperator weight, boolean back) {
        double[][] weights = new double[side.cells()][];
        for (int at = 0; at < weights.length; at++) {
            int first = side.first(at);
            weights[at] = new double[side.last(at) - first + 1];
            for (int of = first; of <= side.last(at); of++) {
                weights[at][of - first] = weight.applyAsDouble(back ? side.weight(of, at) : side.weight(at, of));
            }
        }
        return weights;
    }
}
