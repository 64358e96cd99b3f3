package org.glintery.demo.drills;

import java.util.Arrays;
import java.util.List;
import org.glintery.colour.Ciede2000;
import org.glintery.colour.Lab;
import org.glintery.colour.Srgb;

/**
 * The nearest of some colours of the card by CIEDE2000, for colours rounded to five bits a channel: each is searched once. Safe
 * for several threads: two may search the same colour, and find the same.
 */
final class Nearest {
    /** The weight SL of CIEDE2000 is largest for mean lightnesses 0 and 100: 1 + 0.015 * 2500 / sqrt(20 + 2500). */
    private static final double MOST_WEIGHT_OF_LIGHTNESS = 1.7471;

    private final List<Integer> colours;
    private final Lab[] labs;
    private final short[] found = new short[1 << 15];

    Nearest(DemoCard card, List<Integer> colours) {
        this.colours = List.copyOf(colours);
        this.labs = colours.stream().map(colour -> card.colour(colour).lab()).toArray(Lab[]::new);
        Arrays.fill(found, (short) -1);
    }

    /** Channels from 0 to 255. Gives the place on the card. */
    int of(int red, int green, int blue) {
        int key = red >> 3 << 10 | green >> 3 << 5 | blue >> 3;
        if (found[key] < 0) {
            found[key] = (short) search(new Srgb(middle(red), middle(green), middle(blue)).lab());
        }
        return colours.get(found[key]);
    }

    private int search(Lab wanted) {
        int best = 0;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < labs.length; i++) {
            // The difference is never less than that of the lightnesses alone.
            if (Math.abs(wanted.l() - labs[i].l()) / MOST_WEIGHT_OF_LIGHTNESS >= least) {
                continue;
            }
            double difference = Ciede2000.difference(wanted, labs[i]);
            if (difference < least) {
                least = difference;
                best = i;
            }
        }
        return best;
    }

    private static int middle(int channel) {
        return (channel >> 3) * 255 / 31;
    }
}
