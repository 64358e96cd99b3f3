package org.glintery.colour;

import org.glintery.api.Stable;

/** How well one colour can be read on another: relative luminance and contrast ratio of WCAG 2.2. */
@Stable
public final class Contrast {

    /** What WCAG 2.2 asks of text, success criterion 1.4.3. */
    public static final double FOR_TEXT = 4.5;
    /** What WCAG 2.2 asks of large text and of parts that must be seen, 1.4.3 and 1.4.11. */
    public static final double FOR_LARGE_TEXT_AND_PARTS = 3;

    private Contrast() {}

    /** From 0 for black to 1 for white, by the definition of WCAG 2.2, whose weights are rounded to four digits. */
    public static double relativeLuminance(Srgb colour) {
        LinearRgb light = colour.linear();
        return 0.2126 * light.red() + 0.7152 * light.green() + 0.0722 * light.blue();
    }

    /** From 1 for equal luminance to 21 for black on white; the order does not matter. */
    public static double ratio(Srgb first, Srgb second) {
        double one = relativeLuminance(first) + 0.05;
        double other = relativeLuminance(second) + 0.05;
        return Math.max(one, other) / Math.min(one, other);
    }

    /** Black or white, whichever is read better on this ground. */
    public static Srgb inkOn(Srgb ground) {
        return ratio(ground, Srgb.BLACK) >= ratio(ground, Srgb.WHITE) ? Srgb.BLACK : Srgb.WHITE;
    }
}
