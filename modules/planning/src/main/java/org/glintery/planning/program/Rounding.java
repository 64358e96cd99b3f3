package org.glintery.planning.program;

import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Some conditions added up to one, {@code sum <= limit}, made ready for rounding. A lane is replaced by its link's full load less what is
 * missing, or by its least load plus what is over, whichever is nearer; links that are used rather than not are counted by
 * their absence. Then the sum over links is divided and rounded down, and what is missing or over makes up for it. All in
 * whole numbers, so that no plan is ever cut off.
 */
final class Rounding {

    private static final long HEAVIEST = 1 << 12;

    private final int[] least;
    private final int[] most;
    private final int[] linkOf;
    private final double[] values;

    /** What the links weigh, by column. */
    private final Map<Integer, Long> loads = new TreeMap<>();
    /** What is missing or over and can't be left out, as a sum of columns and a constant. */
    private final Map<Integer, Long> rest = new TreeMap<>();

    private long restConstant;
    private long limit;

    /** @param times by condition, how often it is added; taken off when negative */
    Rounding(Map<SumRow, Integer> times, int[] least, int[] most, int[] linkOf, double[] values) {
        this.least = least;
        this.most = most;
        this.linkOf = linkOf;
        this.values = values;
        Map<Integer, Long> sum = new TreeMap<>();
        times.forEach((condition, count) -> add(condition, count, sum));
        sum.forEach((column, weight) -> {
            if (weight != 0) {
                replace(column, weight);
            }
        });
    }

    /** A condition's sum is its nearer end and what is missing or over; what only helps is left out. */
    private void add(SumRow condition, int times, Map<Integer, Long> sum) {
        double at = condition.at(values);
        boolean nearHigh = condition.high() - at < at - condition.low();
        long end = nearHigh ? condition.high() : condition.low();
        boolean counts = condition.low() < condition.high() && nearHigh == times < 0;
        limit += times * end;
        restConstant += counts ? times * end : 0;
        for (int k = 0; k < condition.columns().length; k++) {
            long weight = (long) times * condition.weights()[k];
            sum.merge(condition.columns()[k], weight, Long::sum);
            if (counts) {
                rest.merge(condition.columns()[k], -weight, Long::sum);
            }
        }
    }

    private void replace(int lane, long factor) {
        int link = linkOf[lane];
        double value = values[lane];
        double full = link < 0 ? most[lane] : most[lane] * values[link];
        boolean byFull = full - value < value - least[lane];
        if (byFull && link >= 0) {
            loads.merge(link, factor * most[lane], Long::sum);
        } else {
            limit -= factor * (byFull ? most[lane] : least[lane]);
        }
        if (byFull && factor > 0) {
            rest.merge(lane, factor, Long::sum);
            if (link >= 0) {
                rest.merge(link, -factor * most[lane], Long::sum);
            } else {
                restConstant -= factor * most[lane];
            }
        } else if (!byFull && factor < 0) {
            rest.merge(lane, factor, Long::sum);
            restConstant -= factor * least[lane];
        }
    }

    /** The cut that is furthest from the values, or null when there is none. */
    RoundingCuts.Cut deepest() {
        TreeSet<Long> divisors = new TreeSet<>();
        loads.forEach((link, load) -> {
            if (load != 0 && values[link] > 1e-6 && values[link] < 1 - 1e-6) {
                divisors.add(Math.abs(load));
            }
        });
        RoundingCuts.Cut deepest = null;
        for (long divisor : divisors) {
            for (long part = divisor; part > 1; part = part % 2 == 0 ? part / 2 : 0) {
                RoundingCuts.Cut cut = divided(part);
                if (cut != null && (deepest == null || cut.depth() > deepest.depth())) {
                    deepest = cut;
                }
            }
        }
        return deepest;
    }

    private RoundingCuts.Cut divided(long divisor) {
        long whole = limit;
        for (Map.Entry<Integer, Long> load : loads.entrySet()) {
            whole -= isMostlyUsed(load.getKey()) ? load.getValue() : 0;
        }
        long left = Math.floorMod(whole, divisor);
        if (left == 0) {
            return null;
        }
        long bound = (divisor - left) * Math.floorDiv(whole, divisor) - restConstant;
        Map<Integer, Long> sum = new TreeMap<>(rest);
        for (Map.Entry<Integer, Long> load : loads.entrySet()) {
            boolean absent = isMostlyUsed(load.getKey());
            long counted = absent ? -load.getValue() : load.getValue();
            long rounded = (divisor - left) * Math.floorDiv(counted, divisor)
                    + Math.max(0, Math.floorMod(counted, divisor) - left);
            sum.merge(load.getKey(), absent ? -rounded : rounded, Long::sum);
            bound -= absent ? rounded : 0;
        }
        return cut(sum, bound);
    }

    private boolean isMostlyUsed(int link) {
        return values[link] > 0.5;
    }

    private RoundingCuts.Cut cut(Map<Integer, Long> sum, long bound) {
        sum.values().removeIf(weight -> weight == 0);
        double at = -bound;
        double square = 0;
        long low = 0;
        for (Map.Entry<Integer, Long> term : sum.entrySet()) {
            long weight = term.getValue();
            if (Math.abs(weight) > HEAVIEST) {
                return null;
            }
            at += weight * values[term.getKey()];
            square += (double) weight * weight;
            low += weight * (weight > 0 ? least[term.getKey()] : most[term.getKey()]);
        }
        if (at <= 0) {
            return null;
        }
        int[] columns = sum.keySet().stream().mapToInt(Integer::intValue).toArray();
        int[] weights = sum.values().stream().mapToInt(Long::intValue).toArray();
        return new RoundingCuts.Cut(new SumRow(columns, weights, low, bound), at / Math.sqrt(square));
    }
}
