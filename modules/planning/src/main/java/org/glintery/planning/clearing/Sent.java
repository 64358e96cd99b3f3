package org.glintery.planning.clearing;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Packets that go from an offer to a want, by their places in the round. */
record Sent(int offer, int want, int packets, boolean throughOrganiser) {

    /** What the traders see of it, sorted by who gives, who gets, and the kind. */
    static List<Transfer> transfers(Round round, List<Sent> plan) {
        Map<Transfer, Integer> packets = new LinkedHashMap<>();
        for (Sent sent : plan) {
            Offer offer = round.offers().get(sent.offer);
            int to = round.wants().get(sent.want).trader();
            packets.merge(
                    new Transfer(offer.trader(), to, offer.kind(), 0, sent.throughOrganiser),
                    sent.packets,
                    Integer::sum);
        }
        return packets.entrySet().stream()
                .map(entry -> entry.getKey().with(entry.getValue()))
                .sorted(Comparator.comparingInt(Transfer::from)
                        .thenComparingInt(Transfer::to)
                        .thenComparingInt(Transfer::kind)
                        .thenComparing(Transfer::throughOrganiser))
                .toList();
    }
}
