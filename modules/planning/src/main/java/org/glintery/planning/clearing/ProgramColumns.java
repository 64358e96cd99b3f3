package org.glintery.planning.clearing;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.glintery.planning.flow.Bounds;
import org.glintery.planning.program.SumRow;

/**
 * Which lanes and links of a network are columns of its program: lanes whose load is not fixed, and links not decided from
 * the start. When it is to be fair, not cheap, there are columns for the steps of each trader's difference besides. The
 * arrays are shared: read them, never write.
 */
final class ProgramColumns {

    static final int NONE = -1;

    /** By arc of a lane and by link, its column or none. */
    final int[] lane;

    final int[] link;
    /** How many columns are lanes; links come behind them, then steps. */
    final int lanes;

    /** Where the steps begin; by trader, the columns of what they give more and get more. */
    final int steps;

    final int[][] givesMore;
    final int[][] getsMore;

    /** By column: its arc or its link; for lanes the column of the link they need, or none; bounds; and charges. */
    final int[] of;

    final int[] needs;
    final int[] least;
    final int[] most;
    final long[] charge;
    /** What links cost that are open from the start. */
    final long paid;

    private int count;

    ProgramColumns(ParcelNetwork net, Bounds ranges, byte[] state, boolean fair) {
        lane = new int[net.lanes().size()];
        link = new int[state.length];
        Arrays.fill(lane, NONE);
        Arrays.fill(link, NONE);
        for (int arc = 0; arc < lane.length; arc++) {
            if (ranges.low()[arc] < ranges.high()[arc]
                    && state[net.lanes().get(arc).link()] != LinkStates.CLOSED) {
                lane[arc] = count++;
            }
        }
        lanes = count;
        long open = 0;
        for (int l = 0; l < state.length; l++) {
            if (state[l] == LinkStates.FREE) {
                link[l] = count++;
            } else if (state[l] == LinkStates.OPEN) {
                open += net.charges().charge()[l];
            }
        }
        paid = fair ? 0 : open;
        steps = count;
        givesMore = steps(net, net.givesMore(), fair);
        getsMore = steps(net, net.getsMore(), fair);
        of = new int[count];
        needs = new int[count];
        least = new int[count];
        most = new int[count];
        charge = new long[count];
        Arrays.fill(needs, NONE);
        fillLanes(net, ranges);
        fillLinks(net, fair);
        for (int t = 0; t < givesMore.length; t++) {
            price(givesMore[t], !net.round().traders().get(t).mayGiveForNothing(), net.high(net.givesMore()[t]));
            price(getsMore[t], true, net.high(net.getsMore()[t]));
        }
    }

    private void fillLanes(ParcelNetwork net, Bounds ranges) {
        for (int arc = 0; arc < lane.length; arc++) {
            if (lane[arc] >= 0) {
                of[lane[arc]] = arc;
                needs[lane[arc]] = link[net.lanes().get(arc).link()];
                least[lane[arc]] = ranges.low()[arc];
                most[lane[arc]] = ranges.high()[arc];
            }
        }
    }

    private void fillLinks(ParcelNetwork net, boolean fair) {
        for (int l = 0; l < link.length; l++) {
            if (link[l] >= 0) {
                of[link[l]] = l;
                most[link[l]] = 1;
                charge[link[l]] = fair ? 0 : net.charges().charge()[l];
            }
        }
    }

    private int[][] steps(ParcelNetwork net, int[] arcs, boolean fair) {
        return IntStream.of(arcs)
                .mapToObj(arc -> fair
                        ? Unfairness.steps(net.high(arc)).stream()
                                .mapToInt(step -> count++)
                                .toArray()
                        : new int[0])
                .toArray(int[][]::new);
    }

    private void price(int[] columns, boolean counts, int high) {
        List<Unfairness.Step> all = Unfairness.steps(high);
        for (int i = 0; i < columns.length; i++) {
            most[columns[i]] = all.get(i).packets();
            charge[columns[i]] = counts ? all.get(i).each() : 0;
        }
    }

    int size() {
        return of.length;
    }

    SumRow row(Map<Integer, Integer> weights, long low, long high) {
        int[] columns = weights.keySet().stream().mapToInt(Integer::intValue).toArray();
        int[] each = weights.values().stream().mapToInt(Integer::intValue).toArray();
        return new SumRow(columns, each, low, high).within(least, most);
    }
}
