package org.glintery.planning.clearing;

import java.util.Arrays;
import java.util.List;
import org.glintery.planning.flow.FlowNetwork;

/**
 * A round as a circulation: packets flow from a trader through their offers to the node of the kind, on through wants to
 * those who get them, and round again through these. What a trader gives more than they get comes from the bank, what they
 * get more goes there. A kind has one node, or two where traders both offer and want it, so that nobody serves themselves.
 */
final class WantsNetwork {

    static final int NONE = -1;
    private static final int UNBOUNDED = 1 << 30;

    final FlowNetwork network;
    /** For each offer its arc, and the node where its packets can be had; or none. */
    final int[] offerArc;

    final int[] offerNode;
    /** For each want its arc and node, or none. */
    final int[] wantArc;

    final int[] wantNode;
    /** For each trader the arcs from the bank, to the bank, and of what they get. */
    final int[] givesMore;

    final int[] getsMore;
    final int[] gets;
    final List<KindArcs> kinds;

    private final Round round;
    private final FlowNetwork.Builder builder = new FlowNetwork.Builder();

    /**
     * The arcs of one kind, in the order of its lines.
     *
     * @param plain from the kind's node to wants of those who don't offer it
     * @param crossed from uncrossed offers to wants of those who offer it too
     * @param across from crossed offers, in rows, to crossed wants; none between lines of the same trader
     */
    record KindArcs(KindLines lines, int[] plain, int[] crossed, int[][] across) {}

    WantsNetwork(Round round, List<KindLines> lines, Part[] parts) {
        this.round = round;
        int traders = round.traders().size();
        offerArc = filled(round.offers().size());
        offerNode = filled(round.offers().size());
        wantArc = filled(round.wants().size());
        wantNode = filled(round.wants().size());
        givesMore = filled(traders);
        getsMore = filled(traders);
        gets = filled(traders);
        int bank = builder.nodes(1);
        int givers = builder.nodes(traders);
        int getters = builder.nodes(traders);
        int[] offered = new int[traders];
        int[] wanted = new int[traders];
        round.offers().forEach(offer -> offered[offer.trader()] += offer.packets());
        round.wants().forEach(want -> wanted[want.trader()] += want.packets());
        for (int t = 0; t < traders; t++) {
            Trader trader = round.traders().get(t);
            givesMore[t] = builder.arc(bank, givers + t, 0, Math.min(trader.mayGiveMore(), offered[t]));
            getsMore[t] = builder.arc(givers + t, bank, 0, Math.min(trader.mayGetMore(), wanted[t]));
            gets[t] = builder.arc(getters + t, givers + t, parts[t] == Part.GETS_SOMETHING ? 1 : 0, wanted[t]);
        }
        kinds = lines.stream().map(kind -> arcs(kind, givers, getters, parts)).toList();
        network = builder.build();
    }

    private KindArcs arcs(KindLines kind, int givers, int getters, Part[] parts) {
        int node = builder.nodes(1);
        int uncrossed = node;
        if (!kind.crossedOffers().isEmpty()) {
            uncrossed = builder.nodes(1);
            builder.arc(uncrossed, node, 0, UNBOUNDED);
        }
        for (int i : kind.offers()) {
            offer(i, givers, uncrossed, parts);
        }
        for (int i : kind.crossedOffers()) {
            offer(i, givers, builder.nodes(1), parts);
            builder.arc(offerNode[i], node, 0, UNBOUNDED);
        }
        kind.wants().forEach(j -> want(j, getters));
        kind.crossedWants().forEach(j -> want(j, getters));
        return new KindArcs(
                kind,
                toWants(node, kind.wants()),
                toWants(uncrossed, kind.crossedWants()),
                kind.crossedOffers().stream()
                        .map(i -> across(i, kind.crossedWants()))
                        .toArray(int[][]::new));
    }

    private void offer(int i, int givers, int node, Part[] parts) {
        Offer offer = round.offers().get(i);
        int most = parts[offer.trader()] == Part.GIVES_NOTHING ? 0 : offer.packets();
        offerArc[i] = builder.arc(givers + offer.trader(), node, 0, most);
        offerNode[i] = node;
    }

    private void want(int j, int getters) {
        if (wantNode[j] == NONE) {
            Want want = round.wants().get(j);
            wantNode[j] = builder.nodes(1);
            wantArc[j] = builder.arc(wantNode[j], getters + want.trader(), 0, want.packets());
        }
    }

    private int[] toWants(int node, List<Integer> wants) {
        return wants.stream()
                .mapToInt(j -> builder.arc(node, wantNode[j], 0, UNBOUNDED))
                .toArray();
    }

    private int[] across(int i, List<Integer> wants) {
        int trader = round.offers().get(i).trader();
        return wants.stream()
                .mapToInt(j -> round.wants().get(j).trader() == trader
                        ? NONE
                        : builder.arc(offerNode[i], wantNode[j], 0, UNBOUNDED))
                .toArray();
    }

    private static int[] filled(int size) {
        int[] places = new int[size];
        Arrays.fill(places, NONE);
        return places;
    }
}
