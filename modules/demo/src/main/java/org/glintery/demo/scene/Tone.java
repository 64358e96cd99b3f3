package org.glintery.demo.scene;

import java.awt.Color;

/** Colours from colours. */
final class Tone {
    private Tone() {}

    /** @param share of the second, 0 to 1 */
    static Color mix(Color first, Color second, double share) {
        double t = Math.max(0, Math.min(1, share));
        return new Color(
                (int) Math.round(first.getRed() * (1 - t) + second.getRed() * t),
                (int) Math.round(first.getGreen() * (1 - t) + second.getGreen() * t),
                (int) Math.round(first.getBlue() * (1 - t) + second.getBlue() * t));
    }

    /** @param opacity 0 to 1 */
    static Color clear(Color colour, double opacity) {
        int alpha = (int) Math.round(255 * Math.max(0, Math.min(1, opacity)));
        return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), alpha);
    }

    static Color dim(Color colour, double share) {
        return mix(colour, new Color(0x0B1020), share);
    }

    static Color lift(Color colour, double share) {
        return mix(colour, new Color(0xFFFDF4), share);
    }

    static Color of(int rgb) {
        return new Color(rgb);
    }
}
