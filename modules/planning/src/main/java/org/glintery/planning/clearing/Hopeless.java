package org.glintery.planning.clearing;

import java.util.Arrays;
import java.util.List;

/** Finds traders who can't get anything because nobody who takes part offers it: they give nothing either, if they must not. */
final class Hopeless {

    private Hopeless() {}

    static Part[] parts(Round round, List<KindLines> kinds) {
        Part[] parts = new Part[round.traders().size()];
        Arrays.fill(parts, Part.OPEN);
        boolean changed = true;
        while (changed) {
            boolean[] served = served(round, kinds, parts);
            changed = false;
            for (int t = 0; t < parts.length; t++) {
                if (parts[t] == Part.OPEN
                        && !served[t]
                        && !round.traders().get(t).mayGiveForNothing()) {
                    parts[t] = Part.GIVES_NOTHING;
                    changed = true;
                }
            }
        }
        return parts;
    }

    private static boolean[] served(Round round, List<KindLines> kinds, Part[] parts) {
        boolean[] served = new boolean[parts.length];
        for (KindLines kind : kinds) {
            boolean byAnyone = gives(round, kind.offers(), parts) || gives(round, kind.crossedOffers(), parts);
            if (byAnyone) {
                kind.wants().forEach(j -> served[round.wants().get(j).trader()] = true);
                kind.crossedWants().forEach(j -> served[round.wants().get(j).trader()] = true);
            }
        }
        return served;
    }

    private static boolean gives(Round round, List<Integer> offers, Part[] parts) {
        return offers.stream().anyMatch(i -> parts[round.offers().get(i).trader()] != Part.GIVES_NOTHING);
    }
}
