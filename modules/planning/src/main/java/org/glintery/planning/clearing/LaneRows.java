package org.glintery.planning.clearing;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.glintery.planning.flow.Bounds;

/**
 * The conditions on lanes as rows of sums: what leaves an offer, what arrives for a want, what a trader gives less what
 * they get, what they get, and what lies on a heap in the end. Lanes are put in the order of their links, and within a link
 * of their wants: a bundle is what goes along one link for one want.
 */
final class LaneRows {

    final int rows;
    /** Lanes in order, by their arcs. */
    final int[] lane;
    /** By link, where its bundles begin; by bundle, where its lanes begin, and its want or none. */
    final int[] firstBundle;

    final int[] firstLane;
    final int[] bundleWant;
    /** Where a lane's rows begin; the rows; and whether the lane counts there or is taken off. */
    final int[] firstRow;

    final int[] row;
    final int[] sign;

    private final ParcelNetwork net;
    private final int wants;
    private final int traders;
    private final int getters;
    private final int heaps;

    LaneRows(ParcelNetwork net) {
        this.net = net;
        List<Lane> lanes = net.lanes();
        wants = net.offerArc().length;
        traders = wants + net.wantArc().length;
        getters = traders + net.gets().length;
        heaps = getters + net.gets().length;
        rows = heaps + 1 + lanes.stream().mapToInt(Lane::heap).max().orElse(-1);
        lane = IntStream.range(0, lanes.size())
                .boxed()
                .sorted(Comparator.comparingInt((Integer arc) -> lanes.get(arc).link())
                        .thenComparingInt(arc -> lanes.get(arc).want()))
                .mapToInt(Integer::intValue)
                .toArray();
        firstBundle = new int[net.ways().size() + 1];
        int[] starts = new int[lane.length + 1];
        int[] of = new int[lane.length];
        int bundles = 0;
        for (int i = 0; i < lane.length; i++) {
            Lane here = lanes.get(lane[i]);
            Lane before = i == 0 ? null : lanes.get(lane[i - 1]);
            if (before == null || here.link() != before.link() || here.want() != before.want() || here.want() < 0) {
                starts[bundles] = i;
                of[bundles++] = here.want();
            }
            firstBundle[here.link() + 1] = bundles;
        }
        starts[bundles] = lane.length;
        firstLane = Arrays.copyOf(starts, bundles + 1);
        bundleWant = Arrays.copyOf(of, bundles);
        firstRow = new int[lane.length + 1];
        row = new int[5 * lane.length];
        sign = new int[5 * lane.length];
        for (int i = 0; i < lane.length; i++) {
            firstRow[i + 1] = fill(lanes.get(lane[i]), firstRow[i]);
        }
    }

    private int fill(Lane here, int start) {
        int end = start;
        if (here.offer() >= 0) {
            end = add(end, here.offer(), 1);
            end = add(end, traders + net.traderOfOffer(here.offer()), 1);
        }
        if (here.want() >= 0) {
            end = add(end, wants + here.want(), 1);
            end = add(end, traders + net.traderOfWant(here.want()), -1);
            end = add(end, getters + net.traderOfWant(here.want()), 1);
        }
        if (here.heap() >= 0) {
            end = add(end, heaps + here.heap(), here.offer() >= 0 ? 1 : -1);
        }
        return end;
    }

    private int add(int at, int inRow, int counted) {
        row[at] = inRow;
        sign[at] = counted;
        return at + 1;
    }

    /** What the sums must lie between, given the bounds of the network's arcs. */
    Bounds bounds(int[] low, int[] high) {
        int[] least = new int[rows];
        int[] most = new int[rows];
        for (int i = 0; i < wants; i++) {
            set(least, most, i, net.offerArc()[i], low, high);
        }
        for (int j = 0; j < traders - wants; j++) {
            set(least, most, wants + j, net.wantArc()[j], low, high);
        }
        for (int t = 0; t < getters - traders; t++) {
            int more = net.givesMore()[t];
            int less = net.getsMore()[t];
            least[traders + t] = low[more] - high[less];
            most[traders + t] = high[more] - low[less];
            set(least, most, getters + t, net.gets()[t], low, high);
        }
        return new Bounds(least, most);
    }

    private static void set(int[] least, int[] most, int at, int arc, int[] low, int[] high) {
        if (arc >= 0) {
            least[at] = low[arc];
            most[at] = high[arc];
        }
    }

    /** Where a want's sum is. */
    int wantRow(int want) {
        return wants + want;
    }

    /** Where what a trader gives more than they get is. */
    int traderRow(int trader) {
        return traders + trader;
    }

    /** By lane in order, the most that fits. */
    int[] rooms(int[] high) {
        return IntStream.of(lane)
                .map(arc -> Math.min(
                        high[arc],
                        Math.min(
                                most(high, net.offerArc(), net.lanes().get(arc).offer()),
                                most(high, net.wantArc(), net.lanes().get(arc).want()))))
                .toArray();
    }

    private static int most(int[] high, int[] arcs, int line) {
        return line < 0 ? Integer.MAX_VALUE : high[arcs[line]];
    }
}
