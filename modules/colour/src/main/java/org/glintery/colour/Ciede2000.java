package org.glintery.colour;

import org.glintery.api.Stable;

/**
 * The colour difference CIEDE2000 (CIE 142-2001, ISO/CIE 11664-6) with all parametric factors 1, in the form of Sharma, Wu
 * and Dalal, Color Res. Appl. 30(1):21-30, 2005. About 1 is just seen side by side. It is symmetric, but no metric: the
 * way over a third colour can measure shorter.
 *
 * <p>Hues are carried as directions, not as angles: the mean hue halves the angle between two directions, and the
 * cosines of its multiples follow from it. That is more than twice as fast and the same to the tenth digit.
 */
@Stable
public final class Ciede2000 {

    private static final double TO_25_POWER_7 = 6103515625.0;
    /** Below this share of the greatest, two hues are opposite and the direction between them is lost in rounding. */
    private static final double OPPOSITE = 1e-7;

    /** Below this mean hue the turn among the blues is less than rounding: exp(-36). */
    private static final double COS_125 = Math.cos(Math.toRadians(125));

    private static final double SIXTY_DEGREES = Math.toRadians(60);
    private static final double COS_275 = Math.cos(Math.toRadians(275));
    private static final double SIN_275 = Math.sin(Math.toRadians(275));
    private static final double COS_30 = Math.cos(Math.toRadians(30));
    private static final double SIN_30 = Math.sin(Math.toRadians(30));
    private static final double COS_6 = Math.cos(Math.toRadians(6));
    private static final double SIN_6 = Math.sin(Math.toRadians(6));
    private static final double COS_63 = Math.cos(Math.toRadians(63));
    private static final double SIN_63 = Math.sin(Math.toRadians(63));

    private Ciede2000() {}

    /** 0 for equal colours; both taken against the same white. */
    public static double difference(Lab first, Lab second) {
        return difference(
                first.l(), first.a(), first.b(), first.chroma(), second.l(), second.a(), second.b(), second.chroma());
    }

    /** As {@link #difference(Lab, Lab)}, for many colours: without objects, each chroma given with its colour. */
    public static double difference(
            double l1, double a1, double b1, double chroma1, double l2, double a2, double b2, double chroma2) {
        double stretch = stretch((chroma1 + chroma2) / 2);
        double x1 = a1 * stretch;
        double x2 = a2 * stretch;
        double c1 = Math.sqrt(x1 * x1 + b1 * b1);
        double c2 = Math.sqrt(x2 * x2 + b2 * b2);
        double meanL = (l1 + l2) / 2;
        double meanC = (c1 + c2) / 2;
        double l = (l2 - l1) / lightnessScale(meanL);
        double c = (c2 - c1) / (1 + 0.045 * meanC);
        double product = c1 * c2;
        if (product == 0) {
            return Math.sqrt(l * l + c * c);
        }
        double dot = x1 * x2 + b1 * b2;
        double cross = x1 * b2 - x2 * b1;
        double along = x1 * c2 + x2 * c1;
        double across = b1 * c2 + b2 * c1;
        double dH;
        if (product + dot < OPPOSITE * product) {
            double turned = turnedWay(x1, b1, x2, b2);
            dH = turned * Math.sqrt(2 * (product - dot));
            double mean = meanAngle(x1, b1, x2, b2);
            along = Math.cos(mean);
            across = Math.sin(mean);
        } else {
            dH = dot > 0 ? cross / Math.sqrt((product + dot) / 2) : Math.signum(cross) * Math.sqrt(2 * (product - dot));
        }
        double norm = Math.sqrt(along * along + across * across);
        double cos = along / norm;
        double sin = across / norm;
        double h = dH / (1 + 0.015 * meanC * hueWeight(cos, sin));
        return Math.sqrt(l * l + c * c + h * h + rotation(meanC, cos, sin) * c * h);
    }

    /** 1 + G of the paper: greys are stretched along a*. */
    static double stretch(double meanChroma) {
        return 1.5 - 0.5 * share7(meanChroma);
    }

    /** S_L of the paper. */
    static double lightnessScale(double meanL) {
        double offMiddle = (meanL - 50) * (meanL - 50);
        return 1 + 0.015 * offMiddle / Math.sqrt(20 + offMiddle);
    }

    /** The root of the share that the seventh power of a chroma has beside that of 25. */
    static double share7(double chroma) {
        double squared = chroma * chroma;
        double power = squared * squared * squared * chroma;
        return Math.sqrt(power / (power + TO_25_POWER_7));
    }

    /** T of the paper, for the direction of the mean hue. */
    static double hueWeight(double cos, double sin) {
        double cos2 = 2 * cos * cos - 1;
        double sin2 = 2 * sin * cos;
        double cos3 = cos2 * cos - sin2 * sin;
        double sin3 = sin2 * cos + cos2 * sin;
        double cos4 = 2 * cos2 * cos2 - 1;
        double sin4 = 2 * sin2 * cos2;
        return 1
                - 0.17 * (cos * COS_30 + sin * SIN_30)
                + 0.24 * cos2
                + 0.32 * (cos3 * COS_6 - sin3 * SIN_6)
                - 0.20 * (cos4 * COS_63 + sin4 * SIN_63);
    }

    /** R_T of the paper, the turn of the ellipses among the blues: 0 or below. */
    static double rotation(double meanChroma, double cos, double sin) {
        if (sin >= 0 && cos > COS_125) {
            return 0;
        }
        double off = Math.toDegrees(Turn.of(sin * COS_275 - cos * SIN_275, cos * COS_275 + sin * SIN_275)) / 25;
        return -Math.sin(SIXTY_DEGREES * Math.exp(-off * off)) * 2 * share7(meanChroma);
    }

    /** 1 when the way from the first hue to the opposite second one counts up, else -1. */
    private static double turnedWay(double x1, double b1, double x2, double b2) {
        double turn = degrees(Math.atan2(b2, x2)) - degrees(Math.atan2(b1, x1));
        return turn > 180 || turn < 0 && turn >= -180 ? -1 : 1;
    }

    /** The mean of two opposite hues, in radians. */
    private static double meanAngle(double x1, double b1, double x2, double b2) {
        double h1 = degrees(Math.atan2(b1, x1));
        double h2 = degrees(Math.atan2(b2, x2));
        double half = (h1 + h2) / 2;
        return Math.toRadians(Math.abs(h1 - h2) <= 180 ? half : half + 180);
    }

    private static double degrees(double radians) {
        double degrees = Math.toDegrees(radians);
        return degrees < 0 ? degrees + 360 : degrees;
    }
}
