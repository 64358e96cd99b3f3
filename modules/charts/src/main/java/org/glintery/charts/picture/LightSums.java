package org.glintery.charts.picture;

/** Sums of light by cell. */
final class LightSums {

    final double[] red;
    final double[] green;
    final double[] blue;
    final double[] opaque;

    LightSums(int cells) {
        red = new double[cells];
        green = new double[cells];
        blue = new double[cells];
        opaque = new double[cells];
    }
}
