package org.glintery.planning.transport;

import java.util.Arrays;

/** The cheapest chain of columns from one that holds too much to one with room (Dijkstra over all columns, with prices). */
final class CheapestChain {

    private final Loads loads;
    private final double[] price;
    private final int[] limit;
    private final double[] way;
    private final boolean[] done;
    private final int[] before;
    private int end;

    /** @param price changed with each chain, so that no exchange between two columns ever gains anything */
    CheapestChain(Loads loads, double[] price, int[] limit) {
        this.loads = loads;
        this.price = price;
        this.limit = limit;
        way = new double[price.length];
        done = new boolean[price.length];
        before = new int[price.length];
    }

    /** Looks for it; false when no column holds too much. */
    boolean find() {
        Arrays.fill(done, false);
        boolean over = false;
        for (int column = 0; column < way.length; column++) {
            boolean begins = loads.of(column) > limit[column];
            over |= begins;
            way[column] = begins ? 0 : Double.POSITIVE_INFINITY;
            before[column] = -1;
        }
        if (!over) {
            return false;
        }
        for (int at = next(); ; at = next()) {
            done[at] = true;
            if (loads.of(at) < limit[at]) {
                end = at;
                break;
            }
            widen(at);
        }
        for (int column = 0; column < way.length; column++) {
            if (way[column] < way[end]) {
                price[column] += way[end] - way[column];
            }
        }
        return true;
    }

    private int next() {
        int next = -1;
        for (int column = 0; column < way.length; column++) {
            if (!done[column] && (next < 0 || way[column] < way[next])) {
                next = column;
            }
        }
        return next;
    }

    private void widen(int from) {
        double[] step = loads.steps(from);
        double base = way[from] - price[from];
        for (int to = 0; to < way.length; to++) {
            if (!done[to]) {
                // never below the way so far: what would be is rounding
                double there = Math.max(way[from], base + step[to] + price[to]);
                if (there < way[to]) {
                    way[to] = there;
                    before[to] = from;
                }
            }
        }
    }

    /** Moves along it as much as goes. */
    void push() {
        long most = limit[end] - loads.of(end);
        int start = end;
        for (; before[start] >= 0; start = before[start]) {
            most = Math.min(most, loads.movable(before[start], start));
        }
        most = Math.min(most, loads.of(start) - limit[start]);
        // each step's row is read before the step behind it changes what lies there
        for (int to = end; before[to] >= 0; to = before[to]) {
            loads.move(before[to], to, most);
        }
    }
}
