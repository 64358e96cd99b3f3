package org.glintery.planning.clearing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Rounds small enough to try every plan, with everything in them that a round can have. */
final class TinyRounds {

    private static final int MOST_MEETINGS = 11;

    private TinyRounds() {}

    static Round next(Random random) {
        Round round = any(random);
        while (EveryPlan.meetings(round) > MOST_MEETINGS || EveryPlan.meetings(round) == 0) {
            round = any(random);
        }
        return round;
    }

    private static Round any(Random random) {
        int count = 2 + random.nextInt(4);
        int kinds = 1 + random.nextInt(5);
        List<Trader> traders = new ArrayList<>();
        List<Offer> offers = new ArrayList<>();
        List<Want> wants = new ArrayList<>();
        for (int t = 0; t < count; t++) {
            traders.add(random.nextInt(6) == 0 ? Trader.generous(random.nextInt(3)) : Trader.within(random.nextInt(3)));
            for (int kind : some(random, kinds)) {
                offers.add(new Offer(t, kind, 1 + random.nextInt(2)));
            }
            for (int line = random.nextInt(3); line > 0; line--) {
                wants.add(new Want(t, List.copyOf(some(random, kinds)), 1 + random.nextInt(2), 1 + random.nextInt(2)));
            }
        }
        return new Round(traders, offers, wants, postage(random, count));
    }

    private static TreeSet<Integer> some(Random random, int kinds) {
        TreeSet<Integer> some = new TreeSet<>();
        IntStream.range(0, 1 + random.nextInt(2)).forEach(i -> some.add(random.nextInt(kinds)));
        return some;
    }

    private static Postage postage(Random random, int traders) {
        Map<Way, Long> special = new HashMap<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            special.put(new Way(random.nextInt(traders), random.nextInt(traders)), (long) random.nextInt(6));
        }
        OptionalInt organiser = random.nextInt(3) == 0 ? OptionalInt.of(random.nextInt(traders)) : OptionalInt.empty();
        return new Postage(random.nextInt(5), special, organiser);
    }
}
