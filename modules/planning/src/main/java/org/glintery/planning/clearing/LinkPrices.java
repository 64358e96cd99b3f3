package org.glintery.planning.clearing;

import java.util.Arrays;
import org.glintery.planning.flow.Bounds;
import org.glintery.planning.flow.Work;

/**
 * The least that links can cost, for networks of any size, by Lagrangian relaxation of all conditions on lanes: what is
 * left falls apart into single links, each of which is used when its lanes earn its charge. Prices are moved by subgradients
 * (Held, Wolfe and Crowder, Mathematical Programming 6, 1974), with steps that stop where a condition becomes slack. Prices
 * are rounded to whole units before they are used, so that a bound is a sum of whole numbers and holds exactly.
 *
 * <p>Not safe for use by several threads.
 */
final class LinkPrices {

    private static final int FINEST = 1 << 16;
    private static final long LARGEST = 1L << 24;
    private static final double SAFE = 1L << 55;
    private static final int PATIENCE = 12;
    private static final double SHORTEST = 0.002;
    private static final double MEMORY = 0.05;
    private static final double MOMENTUM = 0.5;

    private final LaneRows lanes;
    private final Bounds sums;
    private final int[] rooms;
    private final long[] charge;
    private final long scale;
    private final Work work;

    private final double[] at;
    private final double[] direction;
    private final long[] price;
    private final int[] sent;
    private final int[] used;
    private final long[] earns;
    private final int[] order;
    private final double[] usage;
    private long most = Long.MIN_VALUE;

    LinkPrices(ParcelNetwork net, Work work) {
        this.work = work;
        Bounds bounds = net.network().bounds();
        lanes = new LaneRows(net);
        sums = lanes.bounds(bounds.low(), bounds.high());
        rooms = lanes.rooms(bounds.high());
        scale = scale(net);
        charge = Arrays.stream(net.charges().charge()).map(c -> c * scale).toArray();
        at = new double[lanes.rows];
        direction = new double[lanes.rows];
        price = new long[lanes.rows];
        used = new int[lanes.rows];
        sent = new int[lanes.lane.length];
        earns = new long[lanes.lane.length];
        order = new int[lanes.lane.length];
        usage = new double[charge.length];
    }

    private static long scale(ParcelNetwork net) {
        long dearest = Arrays.stream(net.charges().charge()).max().orElse(1);
        return Math.max(1, Math.min(FINEST, LARGEST / dearest));
    }

    /** Whether the sums can't overflow. */
    static boolean handles(ParcelNetwork net) {
        double dearest = Arrays.stream(net.charges().charge()).max().orElse(1);
        double packets = net.round().offers().stream().mapToLong(Offer::packets).sum();
        return dearest * scale(net) * packets < SAFE;
    }

    /**
     * Goes on from the prices it has until the bound has come to a goal, more is not to be had, or the work is spent.
     *
     * @param goal what a plan is known to cost
     * @return no plan costs less
     */
    long improve(long goal) {
        double pace = 1;
        int since = 0;
        while (ceil(most) < goal && pace > SHORTEST && !work.isSpent()) {
            long bound = evaluate();
            since = most == Long.MIN_VALUE || bound > most + scale / 100 ? 0 : since + 1;
            most = Math.max(most, bound);
            if (since >= PATIENCE) {
                since = 0;
                pace /= 1.5;
            }
            move(pace * Math.max(scale, 1.05 * goal * scale - bound));
        }
        return ceil(most);
    }

    /** By link, in how many of the last steps it was used, as a fraction: a hint at good plans. */
    double[] usage() {
        return usage;
    }

    private long ceil(long scaled) {
        return scaled == Long.MIN_VALUE ? 0 : -Math.floorDiv(-scaled, scale);
    }

    private long evaluate() {
        work.spend(6L * lanes.lane.length);
        long sum = 0;
        for (int r = 0; r < price.length; r++) {
            price[r] = Math.round(at[r]);
            sum -= price[r] * (price[r] > 0 ? sums.high()[r] : sums.low()[r]);
        }
        Arrays.fill(used, 0);
        for (int link = 0; link < charge.length; link++) {
            long reduced = charge[link] + earned(link);
            usage[link] += MEMORY * ((reduced < 0 ? 1 : 0) - usage[link]);
            if (reduced < 0) {
                sum += reduced;
                count(link);
            }
        }
        return sum;
    }

    /** Fills the lanes of a link whose prices ask for it. @return what that comes to, 0 or less */
    private long earned(int link) {
        long sum = 0;
        for (int bundle = lanes.firstBundle[link]; bundle < lanes.firstBundle[link + 1]; bundle++) {
            int start = lanes.firstLane[bundle];
            int end = dearestFirst(start, lanes.firstLane[bundle + 1]);
            int want = lanes.bundleWant[bundle];
            int left = want < 0 ? Integer.MAX_VALUE : sums.high()[lanes.wantRow(want)];
            for (int place = start; place < end && left > 0; place++) {
                int i = order[place];
                sent[i] = Math.min(left, rooms[i]);
                left -= sent[i];
                sum += earns[i] * sent[i];
            }
        }
        return sum;
    }

    /** Puts the lanes that earn something in order. @return the end of the order */
    private int dearestFirst(int start, int end) {
        int asked = start;
        for (int i = start; i < end; i++) {
            sent[i] = 0;
            long cost = 0;
            for (int k = lanes.firstRow[i]; k < lanes.firstRow[i + 1]; k++) {
                cost += lanes.sign[k] * price[lanes.row[k]];
            }
            if (cost < 0) {
                earns[i] = cost;
                int place = asked++;
                while (place > start && earns[order[place - 1]] > cost) {
                    order[place] = order[place - 1];
                    place--;
                }
                order[place] = i;
            }
        }
        return asked;
    }

    private void count(int link) {
        int end = lanes.firstLane[lanes.firstBundle[link + 1]];
        for (int i = lanes.firstLane[lanes.firstBundle[link]]; i < end; i++) {
            if (sent[i] > 0) {
                for (int k = lanes.firstRow[i]; k < lanes.firstRow[i + 1]; k++) {
                    used[lanes.row[k]] += lanes.sign[k] * sent[i];
                }
            }
        }
    }

    /** Moves prices towards conditions that are not met; a price does not cross 0, where its condition is slack. */
    private void move(double length) {
        double square = 0;
        for (int r = 0; r < at.length; r++) {
            double slope = slope(r);
            direction[r] = at[r] == 0 && slope == 0 ? 0 : slope + MOMENTUM * direction[r];
            square += direction[r] * direction[r];
        }
        if (square == 0) {
            return;
        }
        for (int r = 0; r < at.length; r++) {
            double moved = at[r] + length / square * direction[r];
            at[r] = sums.low()[r] < sums.high()[r] && at[r] * moved < 0 ? 0 : moved;
        }
    }

    private double slope(int r) {
        double over = (double) used[r] - sums.high()[r];
        double under = (double) used[r] - sums.low()[r];
        if (at[r] != 0) {
            return at[r] > 0 ? over : under;
        }
        return over > 0 ? over : Math.min(under, 0);
    }
}
