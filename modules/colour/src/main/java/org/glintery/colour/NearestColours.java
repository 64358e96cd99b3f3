package org.glintery.colour;

import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.glintery.api.Preview;

/**
 * Finds the colour of a fixed set that is nearest under CIEDE2000: the same one as by trying all, the first among equally
 * near ones, without trying all.
 *
 * <p>Lab is divided into boxes. A box lists the few colours of the set that may be nearest to a colour in it, in the order
 * of what their difference is at least; the search ends at the first one that can't be nearer than the nearest so far, and
 * is done when that lies below what all others differ at least. Boxes are filled when first asked for. Safe for any
 * thread.
 */
@Preview(since = "1.0")
public final class NearestColours {

    private static final double BOX = 4;
    private static final int ACROSS_L = 26;
    private static final int ACROSS_AB = 56;
    private static final double LEAST_AB = -112;

    private final ColourSet set;
    private final AtomicReferenceArray<NearBox> boxes = new AtomicReferenceArray<>(ACROSS_L * ACROSS_AB * ACROSS_AB);

    /** @throws IllegalArgumentException when there is no colour */
    public NearestColours(List<Lab> colours) {
        if (colours.isEmpty()) {
            throw new IllegalArgumentException("no colour to be nearest");
        }
        set = new ColourSet(colours);
    }

    public int size() {
        return set.size();
    }

    /** CIEDE2000 between a colour of the set and another one. */
    public double difference(int index, double toL, double toA, double toB) {
        return set.difference(index, toL, toA, toB);
    }

    /** The place of the nearest in the list that was given. */
    public int nearest(Lab colour) {
        return nearest(colour.l(), colour.a(), colour.b());
    }

    /** As {@link #nearest(Lab)}, for many colours. */
    public int nearest(double toL, double toA, double toB) {
        double toChroma = Math.sqrt(toA * toA + toB * toB);
        double toWeight = DifferenceBound.lightnessWeight(toL);
        NearBox box = box(toL, toA, toB);
        if (box == null) {
            return nearestOfAll(toL, toA, toB, toChroma, toWeight);
        }
        int nearest = box.colour[0];
        double least = set.difference(nearest, toL, toA, toB, toChroma);
        double leastSquared = least * least;
        for (int place = 1; place < box.colour.length && box.leastSquared[place] <= leastSquared; place++) {
            int index = box.colour[place];
            if (set.leastSquared(index, toL, toA, toB, toChroma, toWeight) > leastSquared) {
                continue;
            }
            double difference = set.difference(index, toL, toA, toB, toChroma);
            if (difference < least || difference == least && index < nearest) {
                nearest = index;
                least = difference;
                leastSquared = least * least;
            }
        }
        return leastSquared < box.othersSquared ? nearest : nearestOfAll(toL, toA, toB, toChroma, toWeight);
    }

    private int nearestOfAll(double toL, double toA, double toB, double toChroma, double toWeight) {
        int nearest = 0;
        double least = Double.POSITIVE_INFINITY;
        double leastSquared = least;
        for (int i = 0; i < set.size(); i++) {
            if (set.leastSquared(i, toL, toA, toB, toChroma, toWeight) > leastSquared) {
                continue;
            }
            double difference = set.difference(i, toL, toA, toB, toChroma);
            if (difference < least) {
                nearest = i;
                least = difference;
                leastSquared = least * least;
            }
        }
        return nearest;
    }

    private NearBox box(double toL, double toA, double toB) {
        int atL = (int) Math.floor(toL / BOX);
        int atA = (int) Math.floor((toA - LEAST_AB) / BOX);
        int atB = (int) Math.floor((toB - LEAST_AB) / BOX);
        if (atL < 0 || atL >= ACROSS_L || atA < 0 || atA >= ACROSS_AB || atB < 0 || atB >= ACROSS_AB) {
            return null;
        }
        int at = (atL * ACROSS_AB + atA) * ACROSS_AB + atB;
        NearBox box = boxes.get(at);
        if (box == null) {
            box = NearBox.of(set, atL * BOX, LEAST_AB + atA * BOX, LEAST_AB + atB * BOX, BOX);
            boxes.set(at, box);
        }
        return box;
    }
}
