package org.glintery.charts.stock;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.stream.IntStream;
import org.glintery.planning.transport.TransportTask;

/**
 * Betters a plan of cells by exchanges in circles: each cell wishes for the drill that is cheapest for it with its price. Where
 * such wishes close a circle from drill to drill, or lead to a drill that is left over, all of them are granted; each time
 * the whole gets better, and counts stay. Used once; not safe for several threads.
 */
final class CellsByPrices {

    /** How many drills are looked at for each group of cells: those that are cheapest for it. */
    private static final int CHOICES = 32;

    private final TransportTask task;
    private final double[] prices;
    private final int[] column;
    private final int[] wish;
    private final int[] left;
    /** By column its rows with another wish. */
    private final int[][] wishing;

    private final int[] count;
    private final Deque<Integer> chain = new ArrayDeque<>();
    private final boolean[] onChain;

    /** @param task of single cells @param columns a plan that keeps to the limits; becomes this one's own */
    CellsByPrices(TransportTask task, double[] prices, int[] columns) {
        this.task = task;
        this.prices = prices;
        column = columns;
        wish = new int[column.length];
        left = task.limits().clone();
        count = new int[prices.length];
        onChain = new boolean[prices.length];
        wishing = new int[prices.length][];
    }

    /**
     * The drill of each cell.
     *
     * @param groups of the cells, and what drills cost them
     * @param groupOf by row
     */
    int[] bettered(TransportTask groups, int[] groupOf) {
        int[][] choices = new int[groups.amounts().length][];
        IntStream.range(0, choices.length).parallel().forEach(group -> choices[group] = cheapest(groups, group));
        IntStream.range(0, column.length).parallel().forEach(row -> wish[row] = wish(row, choices[groupOf[row]]));
        for (int of : column) {
            left[of]--;
        }
        for (int of = 0; of < wishing.length; of++) {
            int from = of;
            wishing[of] = IntStream.range(0, column.length)
                    .filter(row -> column[row] == from && wish[row] != from)
                    .toArray();
            count[of] = wishing[of].length;
        }
        for (int of = 0; of < wishing.length; of++) {
            while (count[of] > 0) {
                follow(of);
            }
        }
        return column;
    }

    private int[] cheapest(TransportTask groups, int group) {
        double[] cost = new double[prices.length];
        Arrays.setAll(cost, to -> groups.costs().of(group, to) + prices[to]);
        double[] rising = cost.clone();
        Arrays.sort(rising);
        double most = rising[Math.min(CHOICES, rising.length) - 1];
        return IntStream.range(0, cost.length).filter(to -> cost[to] <= most).toArray();
    }

    private int wish(int row, int[] choices) {
        int wish = column[row];
        double least = task.costs().of(row, wish) + prices[wish];
        for (int to : choices) {
            double cost = task.costs().of(row, to) + prices[to];
            if (cost < least) {
                least = cost;
                wish = to;
            }
        }
        return wish;
    }

    /** Goes from wish to wish until they close a circle, reach what is left over, or end: then the last one is given up. */
    private void follow(int start) {
        int at = start;
        onChain[at] = true;
        while (count[at] > 0) {
            int row = wishing[at][count[at] - 1];
            chain.push(row);
            at = wish[row];
            if (left[at] > 0) {
                left[at]--;
                left[start]++;
                grantAll(-1);
                break;
            }
            if (onChain[at]) {
                grantAll(at);
                break;
            }
            onChain[at] = true;
        }
        if (!chain.isEmpty() && count[at] == 0) {
            count[column[chain.peek()]]--;
        }
        chain.clear();
        Arrays.fill(onChain, false);
    }

    /** @param from where the circle begins; -1 for the whole chain */
    private void grantAll(int from) {
        boolean going = true;
        while (going && !chain.isEmpty()) {
            int row = chain.pop();
            going = column[row] != from;
            count[column[row]]--;
            column[row] = wish[row];
        }
        chain.clear();
    }
}
