package org.glintery.planning.transport;

import org.glintery.api.Preview;

/**
 * What of which row goes where, and the proof of how good that is: whatever else is done, it costs at least what is paid when
 * every one takes the column that is cheapest with its price, less what the prices of all that the columns hold come to
 * (linear programming duality). Arrays are read, never written.
 *
 * @param rows of each share, as columns and amounts
 * @param prices by column, not negative
 * @param cost what is said to be paid
 * @param bound what is said to be paid at least
 */
@Preview(since = "1.0")
public record TransportPlan(int[] rows, int[] columns, int[] amounts, double[] prices, double cost, double bound) {

    /** Of doubles that are summed up: less is nothing. */
    private static final double ROUNDING = 1e-9;

    /** By which share of the bound it may be too dear; infinite where something is paid and nothing is proven. */
    public double gap() {
        double over = cost - bound;
        if (over <= ROUNDING) {
            return 0;
        }
        return bound > 0 ? over / bound : Double.POSITIVE_INFINITY;
    }
}
