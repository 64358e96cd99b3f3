package org.glintery.planning.transport;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import org.glintery.api.Preview;
import org.glintery.planning.transport.TransportFault.Kind;

/**
 * Checks a plan against its task from scratch: that all of every row goes somewhere, that no column holds more than it can,
 * and that cost and bound are what the plan says. It shares nothing with what makes plans. Any thread.
 */
@Preview(since = "1.0")
public final class TransportCheck {

    /** As a share; far above what sums of doubles lose. */
    private static final double ROUNDING = 1e-9;

    private TransportCheck() {}

    /** What is wrong with the plan; empty when nothing is. */
    public static Optional<TransportFault> fault(TransportTask task, TransportPlan plan) {
        return shares(task, plan).or(() -> prices(task, plan)).or(() -> sums(task, plan));
    }

    private static Optional<TransportFault> shares(TransportTask task, TransportPlan plan) {
        int shares = plan.rows().length;
        if (plan.columns().length != shares || plan.amounts().length != shares) {
            return fault(Kind.SHARES, -1, plan.columns().length, shares);
        }
        long[] laid = new long[task.amounts().length];
        long[] held = new long[task.limits().length];
        for (int share = 0; share < shares; share++) {
            int row = plan.rows()[share];
            int column = plan.columns()[share];
            if (row < 0 || row >= laid.length || column < 0 || column >= held.length || plan.amounts()[share] < 0) {
                return fault(Kind.SHARE, share, plan.amounts()[share], 0);
            }
            laid[row] += plan.amounts()[share];
            held[column] += plan.amounts()[share];
        }
        for (int row = 0; row < laid.length; row++) {
            if (laid[row] != task.amounts()[row]) {
                return fault(Kind.ROW, row, laid[row], task.amounts()[row]);
            }
        }
        for (int column = 0; column < held.length; column++) {
            if (held[column] > task.limits()[column]) {
                return fault(Kind.COLUMN, column, held[column], task.limits()[column]);
            }
        }
        return Optional.empty();
    }

    private static Optional<TransportFault> prices(TransportTask task, TransportPlan plan) {
        if (plan.prices().length != task.limits().length) {
            return fault(Kind.PRICES, -1, plan.prices().length, task.limits().length);
        }
        for (int column = 0; column < plan.prices().length; column++) {
            double price = plan.prices()[column];
            if (!(price >= 0) || Double.isInfinite(price)) {
                return fault(Kind.PRICE, column, price, 0);
            }
        }
        return Optional.empty();
    }

    private static Optional<TransportFault> sums(TransportTask task, TransportPlan plan) {
        double cost = cost(task, plan);
        if (!(Math.abs(cost - plan.cost()) <= ROUNDING * (1 + cost))) {
            return fault(Kind.COST, -1, plan.cost(), cost);
        }
        double bound = bound(task, plan.prices());
        return plan.bound() <= bound + ROUNDING * (1 + cost)
                ? Optional.empty()
                : fault(Kind.BOUND, -1, plan.bound(), bound);
    }

    /**
     * The plan with the cost and the bound that are worked out here, whatever it says of them.
     *
     * @throws IllegalArgumentException when its shares or prices are wrong, with what is
     */
    public static TransportPlan proven(TransportTask task, TransportPlan plan) {
        shares(task, plan).or(() -> prices(task, plan)).ifPresent(fault -> {
            throw new IllegalArgumentException(fault.toString());
        });
        return new TransportPlan(
                plan.rows(),
                plan.columns(),
                plan.amounts(),
                plan.prices(),
                cost(task, plan),
                bound(task, plan.prices()));
    }

    private static Optional<TransportFault> fault(Kind kind, int place, double said, double found) {
        return Optional.of(new TransportFault(kind, place, said, found));
    }

    private static double cost(TransportTask task, TransportPlan plan) {
        double cost = 0;
        for (int share = 0; share < plan.rows().length; share++) {
            cost += plan.amounts()[share] * task.costs().of(plan.rows()[share], plan.columns()[share]);
        }
        return cost;
    }

    private static double bound(TransportTask task, double[] prices) {
        int[] rising = IntStream.range(0, prices.length)
                .boxed()
                .sorted(Comparator.comparingDouble(column -> prices[column]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] cheapest = IntStream.range(0, task.amounts().length)
                .parallel()
                .mapToDouble(row -> task.amounts()[row] * cheapest(task, prices, rising, row))
                .toArray();
        double bound = 0;
        for (double one : cheapest) {
            bound += one;
        }
        for (int column = 0; column < prices.length; column++) {
            bound -= prices[column] * task.limits()[column];
        }
        return bound;
    }

    /** No cost is negative: a column whose price alone is more need not be asked. */
    private static double cheapest(TransportTask task, double[] prices, int[] rising, int row) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < rising.length && prices[rising[i]] < least; i++) {
            least = Math.min(least, task.costs().of(row, rising[i]) + prices[rising[i]]);
        }
        return least == Double.POSITIVE_INFINITY ? 0 : least;
    }
}
