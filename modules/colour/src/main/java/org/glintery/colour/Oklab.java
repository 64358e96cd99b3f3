package org.glintery.colour;

import org.glintery.api.Stable;

/**
 * Oklab (Ottosson, "A perceptual color space for image processing", 2020; matrices as in CSS Color 4): steps look even, so
 * mixtures and scales are made here. Differences are measured by {@link Ciede2000}.
 *
 * @param l lightness, 0 to 1
 * @param a from green (negative) to red
 * @param b from blue (negative) to yellow
 */
@Stable
public record Oklab(double l, double a, double b) {

    private static final Matrix3 XYZ_TO_CONES = Matrix3.rows(
            0.8190224379967030,
            0.3619062600528904,
            -0.1288737815209879,
            0.0329836539323885,
            0.9292868615863434,
            0.0361446663506424,
            0.0481771893596242,
            0.2642395317527308,
            0.6335478284694309);
    private static final Matrix3 ROOTS_TO_LAB = Matrix3.rows(
            0.2104542683093140,
            0.7936177747023054,
            -0.0040720430116193,
            1.9779985324311684,
            -2.4285922420485799,
            0.4505937096174110,
            0.0259040424655478,
            0.7827717124575296,
            -0.8086757549230774);
    private static final Matrix3 CONES_TO_XYZ = XYZ_TO_CONES.inverse();
    private static final Matrix3 LAB_TO_ROOTS = ROOTS_TO_LAB.inverse();

    static Oklab of(LinearRgb light) {
        Xyz xyz = light.xyz();
        return XYZ_TO_CONES.times(
                xyz.x(),
                xyz.y(),
                xyz.z(),
                (l, m, s) -> ROOTS_TO_LAB.times(Math.cbrt(l), Math.cbrt(m), Math.cbrt(s), Oklab::new));
    }

    /** The light of a screen that looks so; outside 0 to 1 where no screen can show it. */
    public LinearRgb linearRgb() {
        return LAB_TO_ROOTS
                .times(l, a, b, (x, y, z) -> CONES_TO_XYZ.times(x * x * x, y * y * y, z * z * z, Xyz::new))
                .linearRgb();
    }
}
