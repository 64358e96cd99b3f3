package org.glintery.demo.scene;

import java.util.SplittableRandom;

/** Smooth chance over the plane: the same place and seed always give the same value. Immutable. */
final class Noise {
    private static final int SIDE = 256;
    private static final int MASK = SIDE - 1;
    private static final float[] LATTICE = new float[SIDE * SIDE];

    static {
        var chance = new SplittableRandom(20_240_611);
        for (int i = 0; i < LATTICE.length; i++) {
            LATTICE[i] = (float) chance.nextDouble();
        }
    }

    private final int across;
    private final int down;

    Noise(long seed) {
        var chance = new SplittableRandom(seed);
        across = chance.nextInt(SIDE);
        down = chance.nextInt(SIDE);
    }

    /** Several octaves; about 0 to 1, mostly near 0.5. */
    double cloudy(double x, double y, int octaves) {
        double sum = 0;
        double weight = 0.5;
        double all = 0;
        for (int i = 0; i < octaves; i++) {
            sum += weight * smooth(x, y, i);
            all += weight;
            x *= 2.03;
            y *= 2.03;
            weight *= 0.5;
        }
        return sum / all;
    }

    double smooth(double x, double y, int layer) {
        int left = (int) Math.floor(x);
        int top = (int) Math.floor(y);
        double u = eased(x - left);
        double v = eased(y - top);
        double upper = at(left, top, layer) * (1 - u) + at(left + 1, top, layer) * u;
        double lower = at(left, top + 1, layer) * (1 - u) + at(left + 1, top + 1, layer) * u;
        return upper * (1 - v) + lower * v;
    }

    /** 0 to 1 for a point of the lattice, which repeats itself after 256 points. */
    double at(int x, int y, int layer) {
        return LATTICE[(y + down + 101 * layer & MASK) * SIDE + (x + across + 37 * layer & MASK)];
    }

    private static double eased(double t) {
        return t * t * (3 - 2 * t);
    }
}
