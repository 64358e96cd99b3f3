package org.glintery.planning.clearing;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.glintery.planning.flow.NetworkSimplex;

/**
 * Takes a flow of packets apart into who sends what to whom, in the order of the lines and without a thought for parcels:
 * at the node of a kind any packet may go to any want that it reaches.
 */
final class PlainPlan {

    private final List<Sent> sent = new ArrayList<>();

    private PlainPlan() {}

    static List<Sent> of(WantsNetwork net, NetworkSimplex flow) {
        PlainPlan plan = new PlainPlan();
        net.kinds.forEach(kind -> plan.take(kind, net, flow));
        return List.copyOf(plan.sent);
    }

    private void take(WantsNetwork.KindArcs arcs, WantsNetwork net, NetworkSimplex flow) {
        KindLines lines = arcs.lines();
        List<Heap> crossed = new ArrayList<>();
        for (int row = 0; row < lines.crossedOffers().size(); row++) {
            int offer = lines.crossedOffers().get(row);
            int left = flow.flow(net.offerArc[offer]);
            for (int column = 0; column < lines.crossedWants().size(); column++) {
                int arc = arcs.across()[row][column];
                if (arc >= 0 && flow.flow(arc) > 0) {
                    left -= flow.flow(arc);
                    sent.add(new Sent(offer, lines.crossedWants().get(column), flow.flow(arc), false));
                }
            }
            crossed.add(new Heap(offer, left));
        }
        List<Heap> plain = new ArrayList<>();
        lines.offers().forEach(offer -> plain.add(new Heap(offer, flow.flow(net.offerArc[offer]))));
        List<Heap> wants = heaps(lines.wants(), arcs.plain(), flow);
        deal(crossed, wants);
        deal(plain, wants);
        deal(plain, heaps(lines.crossedWants(), arcs.crossed(), flow));
    }

    private static List<Heap> heaps(List<Integer> lines, int[] arcs, NetworkSimplex flow) {
        List<Heap> heaps = new ArrayList<>();
        for (int i = 0; i < arcs.length; i++) {
            heaps.add(new Heap(lines.get(i), flow.flow(arcs[i])));
        }
        return heaps;
    }

    private void deal(List<Heap> offers, List<Heap> wants) {
        Iterator<Heap> next = wants.iterator();
        Heap want = next.hasNext() ? next.next() : null;
        for (Heap offer : offers) {
            while (offer.packets > 0 && want != null) {
                int dealt = Math.min(offer.packets, want.packets);
                if (dealt > 0) {
                    sent.add(new Sent(offer.line, want.line, dealt, false));
                    offer.packets -= dealt;
                    want.packets -= dealt;
                }
                if (want.packets == 0) {
                    want = next.hasNext() ? next.next() : null;
                }
            }
        }
    }

    /** What is left of a line while it is dealt out. */
    private static final class Heap {
        private final int line;
        private int packets;

        Heap(int line, int packets) {
            this.line = line;
            this.packets = packets;
        }
    }
}
