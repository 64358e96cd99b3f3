package org.glintery.planning.clearing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Turns plans into flows of a {@link ParcelNetwork} and back. */
final class ParcelFlow {

    private final ParcelNetwork net;
    private final Map<Lane, Integer> arcs = new HashMap<>();
    private final Map<Integer, Integer> heapOfOffer = new HashMap<>();

    ParcelFlow(ParcelNetwork net) {
        this.net = net;
        for (int arc = 0; arc < net.lanes().size(); arc++) {
            Lane lane = net.lanes().get(arc);
            arcs.put(ends(lane.offer(), lane.want(), lane.heap()), arc);
            if (lane.want() < 0) {
                heapOfOffer.put(lane.offer(), lane.heap());
            }
        }
    }

    private static Lane ends(int offer, int want, int heap) {
        return new Lane(offer, want, heap, Lane.NONE);
    }

    /** The arcs of the lanes along which this goes. */
    List<Integer> lanes(Sent sent) {
        if (!sent.throughOrganiser()) {
            return List.of(arcs.get(ends(sent.offer(), sent.want(), Lane.NONE)));
        }
        int heap = heapOfOffer.get(sent.offer());
        return List.of(arcs.get(ends(sent.offer(), Lane.NONE, heap)), arcs.get(ends(Lane.NONE, sent.want(), heap)));
    }

    /** The flow that a plan makes, all of whose packets go along lanes of the network. */
    int[] flow(List<Sent> plan) {
        int[] flow = new int[net.network().arcs];
        int[] more = new int[net.gets().length];
        for (Sent sent : plan) {
            lanes(sent).forEach(arc -> flow[arc] += sent.packets());
            flow[net.offerArc()[sent.offer()]] += sent.packets();
            flow[net.wantArc()[sent.want()]] += sent.packets();
            flow[net.gets()[net.traderOfWant(sent.want())]] += sent.packets();
            more[net.traderOfOffer(sent.offer())] += sent.packets();
            more[net.traderOfWant(sent.want())] -= sent.packets();
        }
        for (int t = 0; t < more.length; t++) {
            flow[net.givesMore()[t]] = Math.max(0, more[t]);
            flow[net.getsMore()[t]] = Math.max(0, -more[t]);
        }
        return flow;
    }

    /** The plan of a flow; what lies on a heap is dealt out in the order of the lanes. */
    List<Sent> plan(int[] flow) {
        List<Sent> plan = new ArrayList<>();
        Map<Integer, List<Sent>> heaps = new HashMap<>();
        for (int arc = 0; arc < net.lanes().size(); arc++) {
            Lane lane = net.lanes().get(arc);
            if (flow[arc] > 0 && lane.straight()) {
                plan.add(new Sent(lane.offer(), lane.want(), flow[arc], false));
            } else if (flow[arc] > 0 && lane.want() < 0) {
                heaps.computeIfAbsent(lane.heap(), heap -> new ArrayList<>())
                        .add(new Sent(lane.offer(), Lane.NONE, flow[arc], true));
            }
        }
        for (int arc = 0; arc < net.lanes().size(); arc++) {
            Lane lane = net.lanes().get(arc);
            if (flow[arc] > 0 && lane.offer() < 0) {
                deal(heaps.get(lane.heap()), lane.want(), flow[arc], plan);
            }
        }
        return plan;
    }

    private static void deal(List<Sent> heap, int want, int packets, List<Sent> plan) {
        int left = packets;
        for (int i = 0; left > 0; i++) {
            Sent lying = heap.get(i);
            int dealt = Math.min(left, lying.packets());
            if (dealt > 0) {
                plan.add(new Sent(lying.offer(), want, dealt, true));
                heap.set(i, new Sent(lying.offer(), Lane.NONE, lying.packets() - dealt, true));
                left -= dealt;
            }
        }
    }
}
