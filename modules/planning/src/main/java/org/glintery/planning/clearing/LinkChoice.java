package org.glintery.planning.clearing;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which links a network of lanes has. All, unless that would be too many lanes: then those of a plan, and of the others
 * those along which most kinds of packets could go.
 */
final class LinkChoice {

    private static final long MOST_LANES = 400_000;

    private final int traders;
    private final BitSet chosen;

    private LinkChoice(int traders, BitSet chosen) {
        this.traders = traders;
        this.chosen = chosen;
    }

    static LinkChoice of(Round round, List<KindLines> kinds, Face face, List<Sent> plan) {
        int traders = round.traders().size();
        int[] lanes = new int[traders * traders];
        long all = 0;
        for (KindLines kind : kinds) {
            List<Integer> wants = kind.allWants();
            for (int offer : kind.allOffers()) {
                for (int want : wants) {
                    if (face.passes(offer, want)) {
                        lanes[link(round, offer, want)]++;
                        all++;
                    }
                }
            }
        }
        return new LinkChoice(traders, all <= MOST_LANES ? null : chosen(round, lanes, plan));
    }

    private static BitSet chosen(Round round, int[] lanes, List<Sent> plan) {
        BitSet chosen = new BitSet(lanes.length);
        plan.forEach(sent -> chosen.set(link(round, sent.offer(), sent.want())));
        long sum = chosen.stream().mapToLong(link -> lanes[link]).sum();
        List<Integer> most = IntStream.range(0, lanes.length)
                .filter(link -> lanes[link] > 0 && !chosen.get(link))
                .boxed()
                .sorted(Comparator.comparingInt((Integer link) -> lanes[link]).reversed())
                .toList();
        for (int link : most) {
            sum += lanes[link];
            if (sum > MOST_LANES) {
                break;
            }
            chosen.set(link);
        }
        return chosen;
    }

    private static int link(Round round, int offer, int want) {
        return round.offers().get(offer).trader() * round.traders().size()
                + round.wants().get(want).trader();
    }

    boolean isAll() {
        return chosen == null;
    }

    boolean has(int from, int to) {
        return chosen == null || chosen.get(from * traders + to);
    }
}
