package org.glintery.planning.clearing;

import java.util.List;
import org.glintery.api.Preview;

/**
 * A swap round: who offers what, who wants what, and what parcels cost. Traders are known by their places in the list,
 * kinds by any number; a trader has one line at most for each kind they offer.
 */
@Preview(since = "1.0")
public record Round(List<Trader> traders, List<Offer> offers, List<Want> wants, Postage postage) {

    /** The most packets on one line, and the most that all lines together may offer, or want. */
    public static final int MOST_PACKETS = 10_000_000;

    /** The dearest parcel. */
    public static final long DEAREST = 1_000_000;

    /**
     * @throws IllegalArgumentException for a line of a trader who is not in the list, a kind that a trader offers on two
     *     lines, less than no packets, more than {@link #MOST_PACKETS}, or postage below 0 or above {@link #DEAREST}
     */
    public Round {
        traders = List.copyOf(traders);
        offers = List.copyOf(offers);
        wants = List.copyOf(wants);
        int count = traders.size();
        requirePackets(offers.stream().mapToLong(Offer::packets).toArray());
        requirePackets(wants.stream().mapToLong(Want::packets).toArray());
        offers.forEach(offer -> requireTrader(offer.trader(), count));
        if (offers.stream()
                        .map(offer -> List.of(offer.trader(), offer.kind()))
                        .distinct()
                        .count()
                < offers.size()) {
            throw new IllegalArgumentException("a kind on two lines of a trader");
        }
        wants.forEach(want -> requireTrader(want.trader(), count));
        postage.organiser().ifPresent(organiser -> requireTrader(organiser, count));
        requirePrice(postage.usual());
        postage.special().values().forEach(Round::requirePrice);
    }

    private static void requirePackets(long[] lines) {
        long sum = 0;
        for (long packets : lines) {
            sum += packets;
            if (packets < 0 || sum > MOST_PACKETS) {
                throw new IllegalArgumentException("packets: " + packets + ", so far " + sum);
            }
        }
    }

    private static void requireTrader(int trader, int count) {
        if (trader < 0 || trader >= count) {
            throw new IllegalArgumentException("no such trader: " + trader);
        }
    }

    private static void requirePrice(long price) {
        if (price < 0 || price > DEAREST) {
            throw new IllegalArgumentException("postage: " + price);
        }
    }
}
