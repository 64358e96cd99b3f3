package org.glintery.charts.shading;

import org.glintery.colour.Lab;
import org.glintery.colour.LinearRgb;
import org.glintery.colour.Xyz;

/** Light to Lab for many cells: as {@link Lab#ofD65} to the last digits, without objects and with a fast cube root. */
final class LabConversion {

    private static final double EPSILON = 216.0 / 24389;
    private static final double KAPPA = 24389.0 / 27;

    private static final double[] X = row(new Xyz(1, 0, 0), Xyz.WHITE_D65.x());
    private static final double[] Y = row(new Xyz(0, 1, 0), Xyz.WHITE_D65.y());
    private static final double[] Z = row(new Xyz(0, 0, 1), Xyz.WHITE_D65.z());

    private LabConversion() {}

    /** What red, green and blue give of one of X, Y, Z, as a share of white's. */
    private static double[] row(Xyz wanted, double white) {
        double[] row = new double[3];
        for (int channel = 0; channel < 3; channel++) {
            Xyz xyz = new LinearRgb(channel == 0 ? 1 : 0, channel == 1 ? 1 : 0, channel == 2 ? 1 : 0).xyz();
            row[channel] = (wanted.x() * xyz.x() + wanted.y() * xyz.y() + wanted.z() * xyz.z()) / white;
        }
        return row;
    }

    /** @param lab takes L, a and b */
    static void of(double red, double green, double blue, double[] lab) {
        double fx = compressed(X[0] * red + X[1] * green + X[2] * blue);
        double fy = compressed(Y[0] * red + Y[1] * green + Y[2] * blue);
        double fz = compressed(Z[0] * red + Z[1] * green + Z[2] * blue);
        lab[0] = 116 * fy - 16;
        lab[1] = 500 * (fx - fy);
        lab[2] = 200 * (fy - fz);
    }

    private static double compressed(double share) {
        return share > EPSILON ? cubeRoot(share) : (KAPPA * share + 16) / 116;
    }

    /**
     * For normal positive numbers, to about the last digit: a third of the exponent as a first guess (W. Kahan), then
     * Halley's steps, each of which triples the digits.
     */
    private static double cubeRoot(double x) {
        double root = Double.longBitsToDouble(Double.doubleToRawLongBits(x) / 3 + 0x2A9F7893782DA1CEL);
        for (int step = 0; step < 3; step++) {
            double cube = root * root * root;
            root *= (cube + 2 * x) / (2 * cube + x);
        }
        return root;
    }
}
