package org.glintery.colour;

import org.glintery.api.Stable;

/**
 * CIE 1976 L*a*b* (CIE 15:2018).
 *
 * @param l lightness, 0 for black to 100 for white
 * @param a from green (negative) to red
 * @param b from blue (negative) to yellow
 */
@Stable
public record Lab(double l, double a, double b) {

    private static final double EPSILON = 216.0 / 24389;
    private static final double KAPPA = 24389.0 / 27;

    /** Of a colour under D65, against the D65 white. */
    public static Lab ofD65(Xyz xyz) {
        return of(xyz, Xyz.WHITE_D65);
    }

    /** Of a colour under D50, against the D50 white, as print and colour profiles have it. */
    public static Lab ofD50(Xyz xyz) {
        return of(xyz, Xyz.WHITE_D50);
    }

    private static Lab of(Xyz xyz, Xyz white) {
        double fx = compressed(xyz.x() / white.x());
        double fy = compressed(xyz.y() / white.y());
        double fz = compressed(xyz.z() / white.z());
        return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
    }

    private static double compressed(double share) {
        return share > EPSILON ? Math.cbrt(share) : (KAPPA * share + 16) / 116;
    }

    /** How steeply L, a and b rise with a share of white: the derivative of the compression. */
    static double slope(double share) {
        if (share <= EPSILON) {
            return KAPPA / 116;
        }
        double root = Math.cbrt(share);
        return 1 / (3 * root * root);
    }

    private static double expanded(double f) {
        double cube = f * f * f;
        return cube > EPSILON ? cube : (116 * f - 16) / KAPPA;
    }

    /** The tristimulus values under D65, for values taken against the D65 white. */
    public Xyz xyzD65() {
        double fy = (l + 16) / 116;
        return new Xyz(
                Xyz.WHITE_D65.x() * expanded(fy + a / 500),
                Xyz.WHITE_D65.y() * expanded(fy),
                Xyz.WHITE_D65.z() * expanded(fy - b / 200));
    }

    /** How far from grey. */
    public double chroma() {
        return Math.hypot(a, b);
    }
}
