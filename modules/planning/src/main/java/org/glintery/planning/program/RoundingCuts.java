package org.glintery.planning.program;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Finds cuts by mixed integer rounding (Marchand and Wolsey, Operations Research 49, 2001): a condition on what lanes carry
 * becomes a sharper one on whether their links are used. Where one condition gives none, those that share a lane with it are
 * added.
 */
public final class RoundingCuts {

    private static final double WORTHWHILE = 0.01;
    private static final double NEAR = 1e-6;
    private static final int MOST_CONDITIONS = 5;

    private final List<SumRow> conditions;
    private final int[] least;
    private final int[] most;
    private final int[] linkOf;
    /** By column, the conditions that hold it, the shortest first. */
    private final List<List<SumRow>> holding = new ArrayList<>();

    /**
     * @param conditions whose weights are 1 and -1
     * @param linkOf by column of a lane the column of its link; -1 for lanes that need none, and for links
     */
    public RoundingCuts(List<SumRow> conditions, int[] least, int[] most, int[] linkOf) {
        this.conditions = conditions;
        this.least = least;
        this.most = most;
        this.linkOf = linkOf;
        for (int column = 0; column < least.length; column++) {
            holding.add(new ArrayList<>());
        }
        conditions.stream()
                .sorted(Comparator.comparingInt(row -> row.columns().length))
                .forEach(row -> IntStream.of(row.columns())
                        .forEach(column -> holding.get(column).add(row)));
    }

    /** Cuts that these values break; they hold for every plan. */
    public List<Cut> brokenBy(double[] values) {
        List<Cut> cuts = new ArrayList<>();
        for (SumRow condition : conditions) {
            for (int sign = -1; sign <= 1; sign += 2) {
                from(condition, sign, values).ifPresent(cuts::add);
            }
        }
        return cuts;
    }

    /** Adds conditions that share a lane, so that the lane goes, until a cut is found. */
    private Optional<Cut> from(SumRow start, int sign, double[] values) {
        Map<SumRow, Integer> times = new LinkedHashMap<>();
        Map<Integer, Integer> sum = new TreeMap<>();
        SumRow next = start;
        int count = sign;
        while (next != null) {
            times.put(next, count);
            for (int k = 0; k < next.columns().length; k++) {
                sum.merge(next.columns()[k], count * next.weights()[k], Integer::sum);
            }
            Cut cut = new Rounding(times, least, most, linkOf, values).deepest();
            if (cut != null && cut.depth() > WORTHWHILE) {
                return Optional.of(cut);
            }
            int lane = times.size() < MOST_CONDITIONS ? freest(sum, times.keySet(), values) : -1;
            next = lane < 0 ? null : unused(lane, times.keySet()).orElseThrow();
            count = lane < 0 ? 0 : -sum.get(lane) * weight(next, lane);
        }
        return Optional.empty();
    }

    /** The lane furthest from being empty and from being full that another condition holds; -1 when there is none. */
    private int freest(Map<Integer, Integer> sum, Set<SumRow> used, double[] values) {
        int freest = -1;
        double most = NEAR;
        for (Map.Entry<Integer, Integer> term : sum.entrySet()) {
            int lane = term.getKey();
            double full = linkOf[lane] < 0 ? this.most[lane] : this.most[lane] * values[linkOf[lane]];
            double room = Math.min(values[lane] - least[lane], full - values[lane]);
            if (term.getValue() != 0 && room > most && unused(lane, used).isPresent()) {
                most = room;
                freest = lane;
            }
        }
        return freest;
    }

    private Optional<SumRow> unused(int lane, Set<SumRow> used) {
        return holding.get(lane).stream().filter(row -> !used.contains(row)).findFirst();
    }

    /** 1 or -1. */
    private static int weight(SumRow condition, int column) {
        for (int k = 0; k < condition.columns().length; k++) {
            if (condition.columns()[k] == column) {
                return condition.weights()[k];
            }
        }
        throw new IllegalArgumentException("no such column: " + column);
    }

    /**
     * A row, and how far the values are beyond it.
     *
     * @param depth as a distance
     */
    public record Cut(SumRow row, double depth) {}
}
