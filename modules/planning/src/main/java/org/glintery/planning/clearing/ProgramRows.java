package org.glintery.planning.clearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.glintery.planning.flow.Bounds;
import org.glintery.planning.program.SumRow;

/** The rows of a network's program. */
final class ProgramRows {

    private final ParcelNetwork net;
    private final Bounds ranges;
    private final byte[] state;
    private final ProgramColumns columns;
    private final LaneRows rows;
    /** By row, what the columns weigh, and what lanes with a fixed load add up to. */
    private final List<Map<Integer, Integer>> weights = new ArrayList<>();

    private final long[] fixed;

    ProgramRows(ParcelNetwork net, Bounds ranges, byte[] state, ProgramColumns columns) {
        this.net = net;
        this.ranges = ranges;
        this.state = state;
        this.columns = columns;
        rows = new LaneRows(net);
        fixed = new long[rows.rows];
        for (int r = 0; r < rows.rows; r++) {
            weights.add(new TreeMap<>());
        }
        for (int i = 0; i < rows.lane.length; i++) {
            int arc = rows.lane[i];
            int column = columns.lane[arc];
            for (int k = rows.firstRow[i]; k < rows.firstRow[i + 1]; k++) {
                if (column >= 0) {
                    weights.get(rows.row[k]).merge(column, rows.sign[k], Integer::sum);
                } else {
                    fixed[rows.row[k]] += (long) rows.sign[k] * ranges.low()[arc];
                }
            }
        }
    }

    /** What lanes must add up to; lanes with a fixed load are taken off. */
    List<SumRow> conditions() {
        Bounds sums = rows.bounds(ranges.low(), ranges.high());
        List<SumRow> conditions = new ArrayList<>();
        for (int r = 0; r < rows.rows; r++) {
            if (!weights.get(r).isEmpty()) {
                conditions.add(columns.row(weights.get(r), sums.low()[r] - fixed[r], sums.high()[r] - fixed[r]));
            }
        }
        return conditions;
    }

    /** That the steps make up the difference between given and got, and that the plan costs no more than this. */
    List<SumRow> whenFair(long postage, long parcels) {
        List<SumRow> all = new ArrayList<>();
        for (int t = 0; t < columns.givesMore.length; t++) {
            int r = rows.traderRow(t);
            Map<Integer, Integer> difference = new TreeMap<>(weights.get(r));
            IntStream.of(columns.givesMore[t]).forEach(column -> difference.put(column, -1));
            IntStream.of(columns.getsMore[t]).forEach(column -> difference.put(column, 1));
            all.add(columns.row(difference, -fixed[r], -fixed[r]));
        }
        Map<Integer, Integer> prices = new TreeMap<>();
        Map<Integer, Integer> ones = new TreeMap<>();
        long common = net.charges().commonPostage();
        long paid = 0;
        long open = 0;
        for (int link = 0; link < columns.link.length; link++) {
            long price = net.round().postage().of(net.ways().get(link)) / common;
            if (columns.link[link] >= 0) {
                prices.put(columns.link[link], (int) price);
                ones.put(columns.link[link], 1);
            } else if (state[link] == LinkStates.OPEN) {
                paid += price;
                open++;
            }
        }
        all.add(columns.row(prices, Long.MIN_VALUE, postage / common - paid));
        all.add(columns.row(ones, Long.MIN_VALUE, parcels - open));
        return all;
    }

    /** For each lane that needs a link, and each bundle of such lanes for one want: no more than the link allows. */
    List<SumRow> needs() {
        List<SumRow> all = new ArrayList<>();
        Map<Long, Map<Integer, Integer>> bundles = new TreeMap<>();
        for (int column = 0; column < columns.lanes; column++) {
            int link = columns.needs[column];
            if (link >= 0) {
                all.add(columns.row(Map.of(column, 1, link, -columns.most[column]), Long.MIN_VALUE, 0));
                int want = net.lanes().get(columns.of[column]).want();
                if (want >= 0) {
                    bundles.computeIfAbsent((long) link << 32 | want, key -> new TreeMap<>())
                            .put(column, 1);
                }
            }
        }
        bundles.forEach((key, weights) -> {
            int link = (int) (key >> 32);
            int most = ranges.high()[net.wantArc()[(int) (long) key]];
            long lanes =
                    weights.keySet().stream().mapToLong(c -> columns.most[c]).sum();
            if (weights.size() > 1 && lanes > most) {
                weights.put(link, -most);
                all.add(columns.row(weights, Long.MIN_VALUE, 0));
            }
        });
        return all;
    }
}
