package org.glintery.planning.clearing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/**
 * Nobody gives for nothing who may not: who gives anything gets something. The one condition of a round that is no flow.
 *
 * @param offers by trader, the arcs of their offers; {@code gets} the arc of all they get
 * @param mayGiveForNothing by trader
 */
record GivingRule(int[][] offers, int[] gets, boolean[] mayGiveForNothing) {

    static final int NOBODY = -1;

    /** @param offerArc by offer its arc, or less than 0 */
    static GivingRule of(Round round, int[] offerArc, int[] gets) {
        List<List<Integer>> offers = new ArrayList<>();
        round.traders().forEach(trader -> offers.add(new ArrayList<>()));
        for (int i = 0; i < offerArc.length; i++) {
            if (offerArc[i] >= 0) {
                offers.get(round.offers().get(i).trader()).add(offerArc[i]);
            }
        }
        boolean[] may = new boolean[gets.length];
        for (int t = 0; t < may.length; t++) {
            may[t] = round.traders().get(t).mayGiveForNothing();
        }
        return new GivingRule(
                offers.stream()
                        .map(arcs -> arcs.stream().mapToInt(Integer::intValue).toArray())
                        .toArray(int[][]::new),
                gets,
                may);
    }

    /** The first trader who gives for nothing and may not, or nobody. */
    int brokenFor(IntUnaryOperator flow) {
        return IntStream.range(0, gets.length)
                .filter(t -> !mayGiveForNothing[t]
                        && flow.applyAsInt(gets[t]) == 0
                        && Arrays.stream(offers[t]).anyMatch(arc -> flow.applyAsInt(arc) > 0))
                .findFirst()
                .orElse(NOBODY);
    }

    boolean isKept(int[] flow) {
        return brokenFor(arc -> flow[arc]) == NOBODY;
    }
}
