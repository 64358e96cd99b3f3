package org.glintery.colour;

/**
 * The angle of a direction, as {@link Math#atan2} to the last digits and several times as fast: from the nearest of a few
 * directions whose angles are known, by a series for the small rest.
 */
final class Turn {

    private static final int KNOWN = 32;
    /** By 32 times y / (x + |y|), from -32 on. */
    private static final double[] ANGLE = new double[2 * KNOWN + 1];

    static {
        for (int i = -KNOWN; i <= KNOWN; i++) {
            double y = (double) i / KNOWN;
            ANGLE[i + KNOWN] = Math.atan2(y, 1 - Math.abs(y));
        }
    }

    private Turn() {}

    /** In radians, from -pi to pi. */
    static double of(double y, double x) {
        if (!(x > 0)) {
            return Math.atan2(y, x);
        }
        int known = (int) Math.rint(KNOWN * y / (x + Math.abs(y)));
        double knownY = (double) known / KNOWN;
        double knownX = 1 - Math.abs(knownY);
        double rest = (y * knownX - x * knownY) / (x * knownX + y * knownY);
        double squared = rest * rest;
        // the rest is below .032: what is left out of the series of the arc tangent is less than rounding
        double series = 1 - squared * (1.0 / 3 - squared * (1.0 / 5 - squared * (1.0 / 7 - squared / 9)));
        return ANGLE[known + KNOWN] + rest * series;
    }
}
