package org.glintery.colour;

import java.util.Arrays;

/** The few colours of a set that may be nearest to a colour in a box of Lab, the likeliest first. */
final class NearBox {

    /** How far the limit lies above the difference between the middle of the box and a near colour. */
    private static final double ALLOWANCE = 4;

    /** Places in the set. */
    final int[] colour;
    /** For each of them the square of the least difference that it may have to a colour in the box; rising. */
    final float[] leastSquared;
    /** The square of what every colour that is not listed differs at least from any colour in the box. */
    final double othersSquared;

    private NearBox(int[] colour, float[] leastSquared, double othersSquared) {
        this.colour = colour;
        this.leastSquared = leastSquared;
        this.othersSquared = othersSquared;
    }

    /** For the box from the given corner on. */
    static NearBox of(ColourSet set, double fromL, double fromA, double fromB, double edge) {
        double[] bound = bounds(set, fromL, fromA, fromB, edge);
        int near = 0;
        for (int i = 1; i < bound.length; i++) {
            near = bound[i] < bound[near] ? i : near;
        }
        double reach = set.difference(near, fromL + edge / 2, fromA + edge / 2, fromB + edge / 2) + ALLOWANCE;
        double limit = reach * reach;
        long[] order = new long[bound.length];
        int listed = 0;
        for (int i = 0; i < bound.length; i++) {
            if (bound[i] <= limit) {
                order[listed++] = (long) Float.floatToRawIntBits(roundedDown(bound[i])) << Integer.SIZE | i;
            }
        }
        Arrays.sort(order, 0, listed);
        int[] colour = new int[listed];
        float[] least = new float[listed];
        for (int place = 0; place < listed; place++) {
            colour[place] = (int) order[place];
            least[place] = Float.intBitsToFloat((int) (order[place] >> Integer.SIZE));
        }
        return new NearBox(colour, least, limit);
    }

    private static double[] bounds(ColourSet set, double fromL, double fromA, double fromB, double edge) {
        double weight = Math.min(DifferenceBound.lightnessWeight(fromL), DifferenceBound.lightnessWeight(fromL + edge));
        double farA = Math.max(Math.abs(fromA), Math.abs(fromA + edge));
        double farB = Math.max(Math.abs(fromB), Math.abs(fromB + edge));
        double farChroma = Math.sqrt(farA * farA + farB * farB);
        double[] bound = new double[set.size()];
        for (int i = 0; i < bound.length; i++) {
            bound[i] = DifferenceBound.squared(
                    outside(set.l[i], fromL, edge),
                    outside(set.a[i], fromA, edge),
                    outside(set.b[i], fromB, edge),
                    Math.min(weight, set.lightnessWeight[i]),
                    (farChroma + set.chroma[i]) / 2,
                    fromB >= 0 && set.b[i] >= 0);
        }
        return bound;
    }

    /** As a float that is no greater; floats that are not negative sort as their bits do. */
    private static float roundedDown(double bound) {
        float near = (float) bound;
        return near > bound ? Math.nextDown(near) : near;
    }

    /** How far a value lies outside the range from a value on. */
    private static double outside(double value, double from, double edge) {
        return Math.max(0, Math.max(from - value, value - from - edge));
    }
}
