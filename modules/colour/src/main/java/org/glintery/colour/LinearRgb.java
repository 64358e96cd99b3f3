package org.glintery.colour;

import org.glintery.api.Stable;

/**
 * Light in the sRGB primaries, proportional to what the lamp gives: 0 is none, 1 is white. Outside 0 to 1 lie colours
 * that the screen cannot show. Sums and averages of light are taken here.
 */
@Stable
public record LinearRgb(double red, double green, double blue) {

    // Primaries and D65 white of IEC 61966-2-1, to the digits of CSS Color 4, section 18.
    private static final Matrix3 TO_XYZ = Matrix3.rows(
            0.41239079926595934,
            0.357584339383878,
            0.1804807884018343,
            0.21263900587151027,
            0.715168678767756,
            0.07219231536073371,
            0.01933081871559182,
            0.11919477979462598,
            0.9505321522496607);
    private static final Matrix3 FROM_XYZ = TO_XYZ.inverse();

    static LinearRgb of(Xyz xyz) {
        return FROM_XYZ.times(xyz.x(), xyz.y(), xyz.z(), LinearRgb::new);
    }

    /** The IEC 61966-2-1 transfer function, for a value of 0 to 1. */
    static double decoded(double encoded) {
        return encoded <= 0.04045 ? encoded / 12.92 : Math.pow((encoded + 0.055) / 1.055, 2.4);
    }

    private static int encoded(double linear) {
        double clipped = Math.max(0, Math.min(1, linear));
        double encoded = clipped <= 0.0031308 ? 12.92 * clipped : 1.055 * Math.pow(clipped, 1 / 2.4) - 0.055;
        return (int) Math.round(255 * encoded);
    }

    /** The nearest 8-bit colour; each channel is clipped to what the screen can show. */
    public Srgb srgb() {
        return new Srgb(encoded(red), encoded(green), encoded(blue));
    }

    public Xyz xyz() {
        return TO_XYZ.times(red, green, blue, Xyz::new);
    }

    /** The weight of Y: 0 for black, 1 for white. */
    public double luminance() {
        return xyz().y();
    }
}
