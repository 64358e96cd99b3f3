package org.glintery.colour;

/** CIEDE2000 word for word with hues as angles, as Sharma, Wu and Dalal write it: a second way to the same figures. */
final class AngularCiede2000 {

    private static final double TO_25_POWER_7 = Math.pow(25, 7);

    private AngularCiede2000() {}

    static double difference(Lab first, Lab second) {
        double stretch = 1 + stretch((first.chroma() + second.chroma()) / 2);
        double a1 = first.a() * stretch;
        double a2 = second.a() * stretch;
        double c1 = Math.hypot(a1, first.b());
        double c2 = Math.hypot(a2, second.b());
        double h1 = hue(a1, first.b());
        double h2 = hue(a2, second.b());
        boolean grey = c1 * c2 == 0;

        double turn = grey ? 0 : turn(h1, h2);
        double dL = second.l() - first.l();
        double dC = c2 - c1;
        double dH = 2 * Math.sqrt(c1 * c2) * sin(turn / 2);

        double meanL = (first.l() + second.l()) / 2;
        double meanC = (c1 + c2) / 2;
        double meanH = grey ? h1 + h2 : meanHue(h1, h2);

        double offMiddle = (meanL - 50) * (meanL - 50);
        double sL = 1 + 0.015 * offMiddle / Math.sqrt(20 + offMiddle);
        double sC = 1 + 0.045 * meanC;
        double sH = 1 + 0.015 * meanC * hueWeight(meanH);
        double l = dL / sL;
        double c = dC / sC;
        double h = dH / sH;
        return Math.sqrt(l * l + c * c + h * h + rotation(meanC, meanH) * c * h);
    }

    /** G of the paper: greys are stretched along a*. */
    private static double stretch(double meanChroma) {
        return 0.5 * (1 - share7(meanChroma));
    }

    private static double share7(double chroma) {
        double power = Math.pow(chroma, 7);
        return Math.sqrt(power / (power + TO_25_POWER_7));
    }

    private static double hue(double a, double b) {
        if (a == 0 && b == 0) {
            return 0;
        }
        double degrees = Math.toDegrees(Math.atan2(b, a));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    /** From one hue to the other, the shorter way round. */
    private static double turn(double h1, double h2) {
        double turn = h2 - h1;
        if (turn > 180) {
            return turn - 360;
        }
        return turn < -180 ? turn + 360 : turn;
    }

    private static double meanHue(double h1, double h2) {
        double sum = h1 + h2;
        if (Math.abs(h1 - h2) <= 180) {
            return sum / 2;
        }
        return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
    }

    private static double hueWeight(double hue) {
        return 1 - 0.17 * cos(hue - 30) + 0.24 * cos(2 * hue) + 0.32 * cos(3 * hue + 6) - 0.20 * cos(4 * hue - 63);
    }

    /** The turn of the ellipses among the blues. */
    private static double rotation(double meanChroma, double meanHue) {
        double off = (meanHue - 275) / 25;
        return -sin(60 * Math.exp(-off * off)) * 2 * share7(meanChroma);
    }

    private static double sin(double degrees) {
        return Math.sin(Math.toRadians(degrees));
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }
}
