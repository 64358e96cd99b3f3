package org.glintery.planning.program;

/**
 * A condition on a weighted sum of columns, in whole numbers. The arrays are shared: read them, never write.
 *
 * @param columns each at most once
 * @param low what the sum is at least, {@code high} at most
 */
public record SumRow(int[] columns, int[] weights, long low, long high) {

    double at(double[] values) {
        double sum = 0;
        for (int k = 0; k < columns.length; k++) {
            sum += weights[k] * values[columns[k]];
        }
        return sum;
    }

    /** How far the values are beyond the upper end; 0 or less when they keep it. */
    public double beyond(double[] values) {
        return at(values) - high;
    }

    /** The same with ends no wider than the columns allow. */
    public SumRow within(int[] least, int[] most) {
        long down = 0;
        long up = 0;
        for (int k = 0; k < columns.length; k++) {
            down += (long) weights[k] * (weights[k] > 0 ? least[columns[k]] : most[columns[k]]);
            up += (long) weights[k] * (weights[k] > 0 ? most[columns[k]] : least[columns[k]]);
        }
        return new SumRow(columns, weights, Math.max(low, down), Math.min(high, up));
    }
}
