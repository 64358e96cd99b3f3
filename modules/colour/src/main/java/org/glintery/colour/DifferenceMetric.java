package org.glintery.colour;

import org.glintery.api.Preview;

/**
 * CIEDE2000 for small differences of light about one colour, as a quadratic form: the square of the difference is d' M d
 * for a difference d of linear red, green and blue, to first order. Any thread.
 */
@Preview(since = "1.0")
public final class DifferenceMetric {

    private static final double[] X = row(1, 0, 0, Xyz.WHITE_D65.x());
    private static final double[] Y = row(0, 1, 0, Xyz.WHITE_D65.y());
    private static final double[] Z = row(0, 0, 1, Xyz.WHITE_D65.z());

    private DifferenceMetric() {}

    private static double[] row(double x, double y, double z, double white) {
        double[] row = new double[3];
        for (int channel = 0; channel < 3; channel++) {
            Xyz xyz = new LinearRgb(channel == 0 ? 1 : 0, channel == 1 ? 1 : 0, channel == 2 ? 1 : 0).xyz();
            row[channel] = (x * xyz.x() + y * xyz.y() + z * xyz.z()) / white;
        }
        return row;
    }

    /**
     * The form about a colour.
     *
     * @param form takes six entries of the symmetric matrix: red-red, red-green, red-blue, green-green, green-blue,
     *     blue-blue
     */
    public static void about(LinearRgb light, double[] form) {
        Lab lab = Lab.ofD65(light.xyz());
        double slopeX = Lab.slope(of(X, light));
        double slopeY = Lab.slope(of(Y, light));
        double slopeZ = Lab.slope(of(Z, light));

        double chroma = lab.chroma();
        double stretch = Ciede2000.stretch(chroma);
        double stretched = Math.hypot(lab.a() * stretch, lab.b());
        double cos = stretched == 0 ? 1 : lab.a() * stretch / stretched;
        double sin = stretched == 0 ? 0 : lab.b() / stretched;
        double sL = Ciede2000.lightnessScale(lab.l());
        double sC = 1 + 0.045 * stretched;
        double sH = 1 + 0.015 * stretched * Ciede2000.hueWeight(cos, sin);
        double turn = Ciede2000.rotation(stretched, cos, sin);

        double[] l = new double[3];
        double[] c = new double[3];
        double[] h = new double[3];
        for (int channel = 0; channel < 3; channel++) {
            double a = 500 * (slopeX * X[channel] - slopeY * Y[channel]) * stretch;
            double b = 200 * (slopeY * Y[channel] - slopeZ * Z[channel]);
            l[channel] = 116 * slopeY * Y[channel] / sL;
            c[channel] = (cos * a + sin * b) / sC;
            h[channel] = (cos * b - sin * a) / sH;
        }
        int entry = 0;
        for (int i = 0; i < 3; i++) {
            for (int j = i; j < 3; j++) {
                form[entry++] = l[i] * l[j] + c[i] * c[j] + h[i] * h[j] + turn / 2 * (c[i] * h[j] + c[j] * h[i]);
            }
        }
    }

    private static double of(double[] row, LinearRgb light) {
        return row[0] * light.red() + row[1] * light.green() + row[2] * light.blue();
    }
}
