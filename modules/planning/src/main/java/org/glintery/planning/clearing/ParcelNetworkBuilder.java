package org.glintery.planning.clearing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.glintery.planning.flow.Bounds;
import org.glintery.planning.flow.FlowNetwork;

/** Lays out the {@link ParcelNetwork} of a face. */
final class ParcelNetworkBuilder {

    private final Round round;
    private final Face face;
    private final List<Lane> lanes = new ArrayList<>();
    private final Map<Way, Integer> links = new LinkedHashMap<>();
    private int heaps;

    private final LinkChoice choice;

    private ParcelNetworkBuilder(Round round, Face face, LinkChoice choice) {
        this.round = round;
        this.face = face;
        this.choice = choice;
    }

    /** @param plan whose lanes must be there, even when there are too many for all to be */
    static ParcelNetwork build(Round round, List<KindLines> kinds, Face face, List<Sent> plan) {
        ParcelNetworkBuilder builder = new ParcelNetworkBuilder(round, face, LinkChoice.of(round, kinds, face, plan));
        kinds.forEach(builder::kind);
        return builder.network();
    }

    private void kind(KindLines kind) {
        List<Integer> wants = kind.allWants();
        kind.allOffers().forEach(offer -> straight(offer, wants));
        if (round.postage().organiser().isPresent()) {
            int organiser = round.postage().organiser().getAsInt();
            heap(organiser, kind.offers(), wants);
            kind.crossedOffers().forEach(offer -> heap(organiser, List.of(offer), wants));
        }
    }

    private void straight(int offer, List<Integer> wants) {
        for (int want : wants) {
            if (meet(offer, want) && choice.has(giver(offer), getter(want))) {
                lanes.add(new Lane(offer, want, Lane.NONE, link(giver(offer), getter(want))));
            }
        }
    }

    /** Packets of these offers may lie on one heap: whatever one of them may serve, so may the others. */
    private void heap(int organiser, List<Integer> offers, List<Integer> wants) {
        List<Integer> givers = offers.stream()
                .filter(offer -> giver(offer) != organiser)
                .filter(offer -> wants.stream().anyMatch(want -> getter(want) != organiser && meet(offer, want)))
                .toList();
        if (givers.isEmpty()) {
            return;
        }
        int heap = heaps++;
        givers.forEach(offer -> lanes.add(new Lane(offer, Lane.NONE, heap, link(giver(offer), organiser))));
        wants.stream()
                .filter(want -> getter(want) != organiser && meet(givers.get(0), want))
                .forEach(want -> lanes.add(new Lane(Lane.NONE, want, heap, link(organiser, getter(want)))));
    }

    private boolean meet(int offer, int want) {
        return giver(offer) != getter(want) && face.passes(offer, want);
    }

    private int giver(int offer) {
        return round.offers().get(offer).trader();
    }

    private int getter(int want) {
        return round.wants().get(want).trader();
    }

    private int link(int from, int to) {
        return links.computeIfAbsent(new Way(from, to), way -> links.size());
    }

    private ParcelNetwork network() {
        FlowNetwork.Builder net = new FlowNetwork.Builder();
        int traders = round.traders().size();
        int bank = net.nodes(1);
        int givers = net.nodes(traders);
        int getters = net.nodes(traders);
        int heap = net.nodes(heaps);
        int[] offerNode = nodes(net, round.offers().size(), lanes.stream().map(Lane::offer));
        int[] wantNode = nodes(net, round.wants().size(), lanes.stream().map(Lane::want));
        for (Lane lane : lanes) {
            net.arc(
                    lane.offer() < 0 ? heap + lane.heap() : offerNode[lane.offer()],
                    lane.want() < 0 ? heap + lane.heap() : wantNode[lane.want()],
                    0,
                    Math.min(most(face.offers(), lane.offer()), most(face.wants(), lane.want())));
        }
        int[] givesMore = new int[traders];
        int[] getsMore = new int[traders];
        int[] gets = new int[traders];
        for (int t = 0; t < traders; t++) {
            givesMore[t] = arc(net, bank, givers + t, face.givesMore(), t);
            getsMore[t] = arc(net, givers + t, bank, face.getsMore(), t);
            gets[t] = arc(net, getters + t, givers + t, face.gets(), t);
        }
        int[] offerArc = new int[offerNode.length];
        Arrays.setAll(
                offerArc,
                i -> offerNode[i] < 0 ? Lane.NONE : arc(net, givers + giver(i), offerNode[i], face.offers(), i));
        int[] wantArc = new int[wantNode.length];
        Arrays.setAll(
                wantArc,
                j -> wantNode[j] < 0 ? Lane.NONE : arc(net, wantNode[j], getters + getter(j), face.wants(), j));
        List<Way> ways = List.copyOf(links.keySet());
        return new ParcelNetwork(
                round,
                net.build(),
                List.copyOf(lanes),
                ways,
                Charges.of(round, ways),
                offerArc,
                wantArc,
                givesMore,
                getsMore,
                gets,
                choice.isAll());
    }

    private static int[] nodes(FlowNetwork.Builder net, int size, Stream<Integer> used) {
        int[] node = new int[size];
        Arrays.fill(node, Lane.NONE);
        used.filter(line -> line >= 0 && node[line] < 0).forEach(line -> node[line] = net.nodes(1));
        return node;
    }

    private static int arc(FlowNetwork.Builder net, int from, int to, Bounds bounds, int line) {
        return net.arc(from, to, bounds.low()[line], bounds.high()[line]);
    }

    private static int most(Bounds bounds, int line) {
        return line < 0 ? Integer.MAX_VALUE : bounds.high()[line];
    }
}
