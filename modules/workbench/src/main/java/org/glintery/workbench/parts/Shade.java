package org.glintery.workbench.parts;

import java.awt.Color;

/** Lighter and darker neighbours of a colour. Pure. */
final class Shade {
    private Shade() {}

    /** @param light from -1, black, to 1, white */
    static Color lit(Color colour, double light, int alpha) {
        double towards = light < 0 ? 0 : 255;
        double share = Math.min(1, Math.abs(light));
        return new Color(
                channel(colour.getRed(), towards, share),
                channel(colour.getGreen(), towards, share),
                channel(colour.getBlue(), towards, share),
                alpha);
    }

    /** An outline that stands off from the colour on a light or a dark ground. */
    static Color edge(Color colour, boolean darkGround) {
        return lit(colour, darkGround ? 0.28 : -0.38, 255);
    }

    private static int channel(int from, double towards, double share) {
        return (int) Math.round(from + (towards - from) * share);
    }
}
