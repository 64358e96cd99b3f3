package org.glintery.planning.clearing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.glintery.planning.flow.Bounds;
import org.glintery.planning.flow.FlowNetwork;

/**
 * The best plans of a face, packet by packet: a lane for each offer and want that may meet. All lanes from one trader to
 * another are one link, and a link costs the same whether one packet or ten go along it. With an organiser there are also
 * lanes to a heap of each kind at their place, and on from it.
 *
 * @param network the lanes, numbered as in their list, and behind them the arcs of offers, wants and traders as in
 *     {@link WantsNetwork}
 * @param ways of the links
 * @param offerArc by offer, the arc from its trader, or -1; {@code wantArc} by want, to its trader
 * @param givesMore by trader, the arc from the bank; {@code getsMore} to it; {@code gets} of all they get
 * @param complete whether all lanes are here; when there are too many, only those of promising links are
 */
record ParcelNetwork(
        Round round,
        FlowNetwork network,
        List<Lane> lanes,
        List<Way> ways,
        Charges charges,
        int[] offerArc,
        int[] wantArc,
        int[] givesMore,
        int[] getsMore,
        int[] gets,
        boolean complete) {

    /** The same, where at least so much goes along each lane. */
    ParcelNetwork keeping(int[] flow) {
        Bounds bounds = network.bounds().copy();
        for (int arc = 0; arc < lanes.size(); arc++) {
            bounds.low()[arc] = flow[arc];
        }
        return new ParcelNetwork(
                round,
                network.bounded(bounds),
                lanes,
                ways,
                charges,
                offerArc,
                wantArc,
                givesMore,
                getsMore,
                gets,
                complete);
    }

    /** By arc its link, or -1. */
    int[] links() {
        int[] links = new int[network.arcs];
        Arrays.fill(links, Lane.NONE);
        for (int arc = 0; arc < lanes.size(); arc++) {
            links[arc] = lanes.get(arc).link();
        }
        return links;
    }

    /** By link, the arcs of its lanes. */
    int[][] lanesOfLinks() {
        List<List<Integer>> arcs = new ArrayList<>();
        ways.forEach(way -> arcs.add(new ArrayList<>()));
        for (int arc = 0; arc < lanes.size(); arc++) {
            arcs.get(lanes.get(arc).link()).add(arc);
        }
        return arcs.stream()
                .map(of -> of.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    int high(int arc) {
        return network.high[arc];
    }

    int traderOfOffer(int offer) {
        return round.offers().get(offer).trader();
    }

    int traderOfWant(int want) {
        return round.wants().get(want).trader();
    }

    /** The links along which anything goes. */
    boolean[] used(int[] flow) {
        boolean[] used = new boolean[ways.size()];
        for (int arc = 0; arc < lanes.size(); arc++) {
            used[lanes.get(arc).link()] |= flow[arc] > 0;
        }
        return used;
    }

    /** What the links cost along which anything goes. */
    long charge(int[] flow) {
        boolean[] used = used(flow);
        long sum = 0;
        for (int link = 0; link < used.length; link++) {
            sum += used[link] ? charges.charge()[link] : 0;
        }
        return sum;
    }
}
