package org.glintery.planning.transport;

import java.util.Arrays;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.glintery.api.Preview;

/**
 * Solves a task of many rows and few columns exactly, but for rounding: successive shortest paths (Edmonds and Karp, J. ACM
 * 19(2):248-264, 1972) over the columns alone. All begin where they are cheapest with the prices that are given; as long as
 * a column holds too much, something of it moves on along the cheapest chain of columns to one with room, and the prices
 * follow. Good prices to begin with make it fast and change nothing else.
 */
@Preview(since = "1.0")
public final class CheapestTransport {

    private final TransportTask task;
    private final double[][] cost;
    private final double[] price;
    private final Loads loads;

    private CheapestTransport(TransportTask task, double[] prices) {
        this.task = task;
        int columns = task.limits().length;
        int rows = task.amounts().length;
        // what the columns hold beyond all rows is one more row that costs nothing anywhere
        cost = new double[rows + 1][columns];
        IntStream.range(0, rows).parallel().forEach(row -> {
            for (int column = 0; column < columns; column++) {
                cost[row][column] = task.costs().of(row, column);
            }
        });
        price = prices.clone();
        loads = new Loads(cost, columns);
    }

    /** As {@link #of(TransportTask, double[], BooleanSupplier)}, with no idea of the prices. */
    public static TransportPlan of(TransportTask task) {
        return of(task, new double[task.limits().length], () -> false);
    }

    /**
     * A plan that nothing is cheaper than.
     *
     * @param prices to begin with, such as those of a like task
     * @throws IllegalArgumentException when the columns do not hold all
     * @throws CancellationException when it is cancelled
     */
    public static TransportPlan of(TransportTask task, double[] prices, BooleanSupplier cancelled) {
        if (!task.fits()) {
            throw new IllegalArgumentException(String.valueOf(task.amount()));
        }
        CheapestTransport transport = new CheapestTransport(task, prices);
        transport.begin();
        transport.even(cancelled);
        return transport.plan();
    }

    private void begin() {
        int[] amounts = task.amounts();
        for (int row = 0; row < amounts.length; row++) {
            if (amounts[row] > 0) {
                loads.put(row, cheapest(row), amounts[row]);
            }
        }
        long room = IntStream.of(task.limits()).asLongStream().sum() - task.amount();
        double least = Arrays.stream(price).min().orElse(0);
        int idle = amounts.length;
        for (int column = 0; column < price.length && room > 0; column++) {
            long free = task.limits()[column] - loads.of(column);
            if (price[column] == least && free > 0) {
                long put = Math.min(free, room);
                loads.put(idle, column, put);
                room -= put;
            }
        }
        if (room > 0) {
            loads.put(idle, cheapest(idle), room);
        }
        loads.look();
    }

    private int cheapest(int row) {
        int cheapest = 0;
        for (int column = 1; column < price.length; column++) {
            if (cost[row][column] + price[column] < cost[row][cheapest] + price[cheapest]) {
                cheapest = column;
            }
        }
        return cheapest;
    }

    private void even(BooleanSupplier cancelled) {
        CheapestChain chain = new CheapestChain(loads, price, task.limits());
        while (chain.find()) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException();
            }
            chain.push();
        }
    }

    private TransportPlan plan() {
        double least = Arrays.stream(price).min().orElse(0);
        double bound = 0;
        for (int column = 0; column < price.length; column++) {
            price[column] -= least;
        }
        for (int row = 0; row < task.amounts().length; row++) {
            int cheapest = cheapest(row);
            bound += task.amounts()[row] * (cost[row][cheapest] + price[cheapest]);
        }
        for (int column = 0; column < price.length; column++) {
            bound -= price[column] * task.limits()[column];
        }
        return loads.plan(task.amounts().length, price, bound);
    }
}
