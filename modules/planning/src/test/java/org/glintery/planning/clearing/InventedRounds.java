package org.glintery.planning.clearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Invented swap rounds, the same for the same seed.
 *
 * @param offers kinds that each trader offers, {@code wants} lines that each wants
 * @param near how many kinds may serve a want, at most
 * @param packets on a line, at most
 * @param tolerance by how much given and received may differ, at most
 */
record InventedRounds(
        int traders, int kinds, int offers, int wants, int near, int packets, int tolerance, int priorities) {

    /** Forty members who each offer ten and want eight of three hundred kinds: one or two could serve a want. */
    static InventedRounds sparse() {
        return new InventedRounds(40, 300, 10, 8, 2, 2, 1, 2);
    }

    /** Two or three could serve a want. */
    static InventedRounds middling() {
        return new InventedRounds(40, 300, 20, 12, 3, 2, 2, 3);
    }

    /** Forty members with well-stocked cabinets: a dozen could serve most wants. */
    static InventedRounds dense() {
        return new InventedRounds(40, 300, 60, 30, 3, 3, 2, 2);
    }

    /** A federation of clubs. */
    static InventedRounds large() {
        return new InventedRounds(500, 2_000, 40, 25, 3, 3, 2, 2);
    }

    Round round(long seed) {
        Random random = new Random(seed);
        List<Trader> all = new ArrayList<>();
        List<Offer> offered = new ArrayList<>();
        List<Want> wanted = new ArrayList<>();
        for (int t = 0; t < traders; t++) {
            int trader = t;
            all.add(Trader.within(random.nextInt(tolerance + 1)));
            int[] mixed = mixed(random);
            int given = Math.min(offers, kinds);
            IntStream.range(0, given)
                    .forEach(i -> offered.add(new Offer(trader, mixed[i], 1 + random.nextInt(packets))));
            for (int j = 0; j < wants; j++) {
                List<Integer> any = new ArrayList<>();
                for (int n = random.nextInt(near); n >= 0; n--) {
                    any.add(mixed[given + random.nextInt(kinds - given)]);
                }
                wanted.add(new Want(trader, any, 1 + random.nextInt(packets), 1 + random.nextInt(priorities)));
            }
        }
        return new Round(all, offered, wanted, Postage.flat(250));
    }

    private int[] mixed(Random random) {
        int[] mixed = IntStream.range(0, kinds).toArray();
        for (int i = kinds - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            int kind = mixed[i];
            mixed[i] = mixed[j];
            mixed[j] = kind;
        }
        return mixed;
    }
}
