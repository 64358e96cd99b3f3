package org.glintery.colour;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.glintery.api.Stable;

/**
 * A colour of a screen in 8-bit sRGB (IEC 61966-2-1).
 *
 * @param red 0 to 255, as green and blue
 */
@Stable
public record Srgb(int red, int green, int blue) {

    public static final Srgb WHITE = new Srgb(255, 255, 255);
    public static final Srgb BLACK = new Srgb(0, 0, 0);

    private static final Pattern HEX = Pattern.compile("#?(?:\\p{XDigit}{3}|\\p{XDigit}{6})");

    /** @throws IllegalArgumentException for a value outside 0 to 255 */
    public Srgb {
        if (((red | green | blue) & ~0xFF) != 0) {
            throw new IllegalArgumentException("outside 0 to 255: " + red + ", " + green + ", " + blue);
        }
    }

    /** From the three low bytes, red highest, as AWT and pictures hold it; higher bits are ignored. */
    public static Srgb ofRgb(int rgb) {
        return new Srgb(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF);
    }

    /** Reads {@code #7fffd4}, {@code 7FFFD4} or {@code #abc}, with space around it; empty for anything else. */
    public static Optional<Srgb> parse(String hex) {
        String text = hex.strip();
        if (!HEX.matcher(text).matches()) {
            return Optional.empty();
        }
        String digits = text.startsWith("#") ? text.substring(1) : text;
        String six = digits.length() == 3 ? digits.replaceAll("(.)", "$1$1") : digits;
        return Optional.of(ofRgb(Integer.parseInt(six, 16)));
    }

    /** {@code #7fffd4}. */
    public String hex() {
        return String.format(Locale.ROOT, "#%06x", rgb());
    }

    /** The three bytes in one number, red highest. */
    public int rgb() {
        return red << 16 | green << 8 | blue;
    }

    public LinearRgb linear() {
        return new LinearRgb(
                LinearRgb.decoded(red / 255.0), LinearRgb.decoded(green / 255.0), LinearRgb.decoded(blue / 255.0));
    }

    public Xyz xyz() {
        return linear().xyz();
    }

    /** CIE L*a*b* against the D65 white, in which colour differences are measured here. */
    public Lab lab() {
        return Lab.ofD65(xyz());
    }

    public Oklab oklab() {
        return Oklab.of(linear());
    }
}
