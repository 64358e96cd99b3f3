package org.glintery.planning.program;

import java.util.List;

/**
 * What prices of rows prove about a program, in whole numbers: by weak duality any prices prove a bound, so they are
 * rounded, and the bound they prove is summed up exactly.
 */
public final class CertainBound {

    /** Charges times fineness stay below this, so that no sum overflows with packets and weights below 2^16. */
    private static final double LARGEST = 1L << 36;

    private static final int FINEST = 1 << 24;

    private final long[] charges;
    private final long fineness;
    private final long[] reduced;
    private long sum;

    public CertainBound(long[] charges) {
        this.charges = charges;
        long dearest = 1;
        for (long charge : charges) {
            dearest = Math.max(dearest, charge);
        }
        fineness = (long) Math.max(1, Math.min(FINEST, Math.floor(LARGEST / dearest)));
        reduced = new long[charges.length];
    }

    /** Whether the sums of such rows can't overflow. */
    public static boolean handles(long packets) {
        return packets < 1 << 16;
    }

    /** The least sum of charges that these prices leave possible. */
    public long least(List<SumRow> rows, double[] prices, int[] least, int[] most) {
        for (int j = 0; j < charges.length; j++) {
            reduced[j] = charges[j] * fineness;
        }
        sum = 0;
        for (int i = 0; i < prices.length; i++) {
            if (prices[i] != 0) {
                SumRow row = rows.get(i);
                long price = Math.round(Math.max(-LARGEST, Math.min(LARGEST, prices[i] * fineness)));
                sum += price * (price > 0 ? row.low() : row.high());
                for (int k = 0; k < row.columns().length; k++) {
                    reduced[row.columns()[k]] -= price * row.weights()[k];
                }
            }
        }
        for (int j = 0; j < charges.length; j++) {
            sum += reduced[j] * (reduced[j] > 0 ? least[j] : most[j]);
        }
        return ceil(sum);
    }

    /** The least sum of charges, by the same prices, when a column between 0 and 1 ends at its other bound. */
    public long otherwise(int column) {
        return ceil(sum + Math.abs(reduced[column]));
    }

    /** The sum last proven, before it was rounded up. */
    public double level() {
        return (double) sum / fineness;
    }

    /** Whether these prices want a column to be at its upper bound. */
    public boolean wants(int column) {
        return reduced[column] < 0;
    }

    private long ceil(long fine) {
        return -Math.floorDiv(-fine, fineness);
    }
}
