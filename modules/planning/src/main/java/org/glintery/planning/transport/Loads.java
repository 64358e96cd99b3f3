package org.glintery.planning.transport;

import java.util.Arrays;

/**
 * What lies in each column, and for each pair of columns the row that moves from one to the other most cheaply. Not safe for
 * several threads.
 */
final class Loads {

    private final double[][] cost;
    private final int columns;
    private final int[][] row;
    private final long[][] amount;
    private final int[] count;
    private final long[] load;
    private final double[][] step;
    private final int[][] stepRow;

    Loads(double[][] cost, int columns) {
        this.cost = cost;
        this.columns = columns;
        row = new int[columns][8];
        amount = new long[columns][8];
        count = new int[columns];
        load = new long[columns];
        step = new double[columns][columns];
        stepRow = new int[columns][columns];
    }

    long of(int column) {
        return load[column];
    }

    /** What it costs at least to move one of a column on, by where; infinite from an empty one. */
    double[] steps(int from) {
        return step[from];
    }

    /** Puts a row that is not there yet into a column; {@link #look} after the last. */
    void put(int newRow, int column, long put) {
        if (count[column] == row[column].length) {
            row[column] = Arrays.copyOf(row[column], 2 * count[column]);
            amount[column] = Arrays.copyOf(amount[column], 2 * count[column]);
        }
        row[column][count[column]] = newRow;
        amount[column][count[column]++] = put;
        load[column] += put;
    }

    void look() {
        for (int column = 0; column < columns; column++) {
            Arrays.fill(step[column], Double.POSITIVE_INFINITY);
            Arrays.fill(stepRow[column], -1);
            for (int i = 0; i < count[column]; i++) {
                offer(column, row[column][i]);
            }
        }
    }

    private void offer(int from, int of) {
        double[] costs = cost[of];
        double here = costs[from];
        for (int to = 0; to < columns; to++) {
            if (costs[to] - here < step[from][to]) {
                step[from][to] = costs[to] - here;
                stepRow[from][to] = of;
            }
        }
    }

    /** How much the cheapest row from one column to another has there. */
    long movable(int from, int to) {
        return amount[from][place(from, stepRow[from][to])];
    }

    /** Moves some of the cheapest row. */
    void move(int from, int to, long moved) {
        int of = stepRow[from][to];
        int there = place(to, of);
        if (there < 0) {
            put(of, to, moved);
            offer(to, of);
        } else {
            amount[to][there] += moved;
            load[to] += moved;
        }
        int place = place(from, of);
        amount[from][place] -= moved;
        load[from] -= moved;
        if (amount[from][place] == 0) {
            remove(from, place, of);
        }
    }

    private int place(int column, int of) {
        int[] rows = row[column];
        for (int i = 0; i < count[column]; i++) {
            if (rows[i] == of) {
                return i;
            }
        }
        return -1;
    }

    private void remove(int column, int place, int of) {
        int last = --count[column];
        row[column][place] = row[column][last];
        amount[column][place] = amount[column][last];
        for (int to = 0; to < columns; to++) {
            if (stepRow[column][to] == of) {
                lookAgain(column, to);
            }
        }
    }

    private void lookAgain(int column, int to) {
        double least = Double.POSITIVE_INFINITY;
        int cheapest = -1;
        for (int i = 0; i < count[column]; i++) {
            double[] costs = cost[row[column][i]];
            if (costs[to] - costs[column] < least) {
                least = costs[to] - costs[column];
                cheapest = row[column][i];
            }
        }
        step[column][to] = least;
        stepRow[column][to] = cheapest;
    }

    /** Of the rows before the given one. */
    TransportPlan plan(int rows, double[] prices, double bound) {
        int most = Arrays.stream(count).sum();
        int[] planRow = new int[most];
        int[] planColumn = new int[most];
        int[] planAmount = new int[most];
        int shares = 0;
        double paid = 0;
        for (int column = 0; column < columns; column++) {
            for (int i = 0; i < count[column]; i++) {
                int of = row[column][i];
                if (of < rows) {
                    planRow[shares] = of;
                    planColumn[shares] = column;
                    planAmount[shares++] = (int) amount[column][i];
                    paid += amount[column][i] * cost[of][column];
                }
            }
        }
        return new TransportPlan(
                Arrays.copyOf(planRow, shares),
                Arrays.copyOf(planColumn, shares),
                Arrays.copyOf(planAmount, shares),
                prices.clone(),
                paid,
                bound);
    }
}
