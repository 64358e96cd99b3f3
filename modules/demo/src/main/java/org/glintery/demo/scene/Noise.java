package org.glintery.demo.scene;

/** Smooth chance over the plane: the same place and seed always give the same value. */
final class Noise {
    private final long seed;

    Noise(long seed) {
        this.seed = seed;
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

    /** 0 to 1 for a point of the lattice. */
    double at(int x, int y, int layer) {
        long h = seed + x * 0x9E3779B97F4A7C15L + y * 0xC2B2AE3D27D4EB4FL + layer * 0x165667B19E3779F9L;
        h = (h ^ h >>> 31) * 0xBF58476D1CE4E5B9L;
        h = (h ^ h >>> 27) * 0x94D049BB133111EBL;
        return ((h ^ h >>> 33) >>> 11) * 0x1.0p-53;
    }

    private static double eased(double t) {
        return t * t * (3 - 2 * t);
    }
}
