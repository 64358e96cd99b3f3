package org.glintery.planning.clearing;

import java.util.OptionalInt;

/** What people do by hand: two at a time, one packet for one packet, until no two are left who can. */
final class PairwiseSwaps {

    private final Round round;
    private final int[] offerLeft;
    private final int[] wantLeft;

    private PairwiseSwaps(Round round) {
        this.round = round;
        offerLeft = round.offers().stream().mapToInt(Offer::packets).toArray();
        wantLeft = round.wants().stream().mapToInt(Want::packets).toArray();
    }

    /** The packets that find someone who wants them. */
    static int packets(Round round) {
        PairwiseSwaps swaps = new PairwiseSwaps(round);
        int packets = 0;
        for (int a = 0; a < round.traders().size(); a++) {
            for (int b = a + 1; b < round.traders().size(); b++) {
                while (swaps.swap(a, b)) {
                    packets += 2;
                }
            }
        }
        return packets;
    }

    private boolean swap(int a, int b) {
        OptionalInt want = wantServed(a, b);
        OptionalInt other = wantServed(b, a);
        if (want.isEmpty() || other.isEmpty()) {
            return false;
        }
        take(want.getAsInt(), b);
        take(other.getAsInt(), a);
        return true;
    }

    /** The most urgent want of one that the other can serve. */
    private OptionalInt wantServed(int of, int by) {
        OptionalInt best = OptionalInt.empty();
        for (int j = 0; j < wantLeft.length; j++) {
            Want want = round.wants().get(j);
            if (want.trader() == of
                    && wantLeft[j] > 0
                    && offer(want, by).isPresent()
                    && (best.isEmpty()
                            || want.priority()
                                    < round.wants().get(best.getAsInt()).priority())) {
                best = OptionalInt.of(j);
            }
        }
        return best;
    }

    private OptionalInt offer(Want want, int by) {
        for (int i = 0; i < offerLeft.length; i++) {
            Offer offer = round.offers().get(i);
            if (offer.trader() == by && offerLeft[i] > 0 && want.kinds().contains(offer.kind())) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private void take(int want, int from) {
        offerLeft[offer(round.wants().get(want), from).orElseThrow()]--;
        wantLeft[want]--;
    }
}
