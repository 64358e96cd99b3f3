package org.glintery.planning.clearing;

import java.util.ArrayList;
import java.util.List;

/**
 * How unfair it is that a trader gives more packets than they get, or fewer: the square of the difference, so that it is
 * spread rather than left to one. Beyond {@value #EXACT} packets squares are joined by straight lines, at the doubled
 * differences. What someone gives more who may give for nothing is not counted.
 */
final class Unfairness {

    private static final int EXACT = 16;

    private Unfairness() {}

    /** The packets from one difference to the next, and what each of them adds. */
    record Step(int packets, long each) {}

    /** From 0 to a difference of so many packets. */
    static List<Step> steps(int most) {
        List<Step> steps = new ArrayList<>();
        long from = 0;
        long width = 1;
        while (from < most) {
            long to = Math.min(most, from + width);
            steps.add(new Step((int) (to - from), 2 * from + width));
            from += width;
            width = from < EXACT ? 1 : from;
        }
        return steps;
    }

    /** Of a plan, over all traders. */
    static long of(Round round, List<Sent> plan) {
        int[] more = new int[round.traders().size()];
        for (Sent sent : plan) {
            more[round.offers().get(sent.offer()).trader()] += sent.packets();
            more[round.wants().get(sent.want()).trader()] -= sent.packets();
        }
        long sum = 0;
        for (int t = 0; t < more.length; t++) {
            sum += more[t] > 0 && round.traders().get(t).mayGiveForNothing() ? 0 : of(Math.abs(more[t]));
        }
        return sum;
    }

    private static long of(int difference) {
        return steps(difference).stream()
                .mapToLong(step -> step.packets() * step.each())
                .sum();
    }
}
