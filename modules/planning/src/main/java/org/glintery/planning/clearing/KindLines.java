package org.glintery.planning.clearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The offers and wants of one kind, by their places in the round. A trader on both sides may give this kind and get it,
 * but never from themselves; such lines are kept apart as crossed.
 */
record KindLines(
        int kind, List<Integer> offers, List<Integer> wants, List<Integer> crossedOffers, List<Integer> crossedWants) {

    /** In the order of the kinds, those that are both offered and wanted by different traders. */
    static List<KindLines> of(Round round) {
        Map<Integer, List<Integer>> offers = new TreeMap<>();
        Map<Integer, List<Integer>> wants = new TreeMap<>();
        for (int i = 0; i < round.offers().size(); i++) {
            if (round.offers().get(i).packets() > 0) {
                offers.computeIfAbsent(round.offers().get(i).kind(), k -> new ArrayList<>())
                        .add(i);
            }
        }
        for (int j = 0; j < round.wants().size(); j++) {
            if (round.wants().get(j).packets() > 0) {
                for (int kind : round.wants().get(j).kinds()) {
                    wants.computeIfAbsent(kind, k -> new ArrayList<>()).add(j);
                }
            }
        }
        List<KindLines> kinds = new ArrayList<>();
        offers.forEach((kind, lines) -> {
            if (wants.containsKey(kind)) {
                kinds.add(of(round, kind, lines, wants.get(kind)));
            }
        });
        return List.copyOf(kinds);
    }

    List<Integer> allOffers() {
        return Stream.concat(offers.stream(), crossedOffers.stream()).toList();
    }

    List<Integer> allWants() {
        return Stream.concat(wants.stream(), crossedWants.stream()).toList();
    }

    private static KindLines of(Round round, int kind, List<Integer> offers, List<Integer> wants) {
        boolean[] gives = new boolean[round.traders().size()];
        boolean[] gets = new boolean[round.traders().size()];
        offers.forEach(i -> gives[round.offers().get(i).trader()] = true);
        wants.forEach(j -> gets[round.wants().get(j).trader()] = true);
        return new KindLines(
                kind,
                offers.stream()
                        .filter(i -> !gets[round.offers().get(i).trader()])
                        .toList(),
                wants.stream()
                        .filter(j -> !gives[round.wants().get(j).trader()])
                        .toList(),
                offers.stream()
                        .filter(i -> gets[round.offers().get(i).trader()])
                        .toList(),
                wants.stream().filter(j -> gives[round.wants().get(j).trader()]).toList());
    }
}
