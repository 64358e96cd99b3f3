package org.glintery.charts.shading;

/**
 * With which shares, summing to 1, some points come nearest to the origin, by their products with each other. Shares may be
 * below 0. Not safe for several threads.
 */
final class ShareEquations {

    private static final double SINGULAR = 1e-12;

    private final double[][] rows;
    private final double[] shares;

    ShareEquations(int most) {
        rows = new double[most][most + 1];
        shares = new double[most];
    }

    void product(int one, int other, double product) {
        rows[one][other] = 1 + product;
    }

    double[] shares() {
        return shares;
    }

    /** Solves (1 + products) u = 1 by Gauss, and lets u sum to 1; gives false when the points do not determine it. */
    boolean solve(int count) {
        for (int row = 0; row < count; row++) {
            rows[row][count] = 1;
        }
        for (int column = 0; column < count; column++) {
            if (!pivot(column, count)) {
                return false;
            }
            for (int row = column + 1; row < count; row++) {
                double factor = rows[row][column] / rows[column][column];
                for (int k = column; k <= count; k++) {
                    rows[row][k] -= factor * rows[column][k];
                }
            }
        }
        double sum = 0;
        for (int row = count - 1; row >= 0; row--) {
            double value = rows[row][count];
            for (int k = row + 1; k < count; k++) {
                value -= rows[row][k] * shares[k];
            }
            shares[row] = value / rows[row][row];
            sum += shares[row];
        }
        for (int i = 0; i < count; i++) {
            shares[i] /= sum;
        }
        return true;
    }

    private boolean pivot(int column, int count) {
        int pivot = column;
        for (int row = column + 1; row < count; row++) {
            pivot = Math.abs(rows[row][column]) > Math.abs(rows[pivot][column]) ? row : pivot;
        }
        double[] swapped = rows[column];
        rows[column] = rows[pivot];
        rows[pivot] = swapped;
        return Math.abs(rows[column][column]) > SINGULAR;
    }
}
