package org.glintery.demo.drills;

import java.awt.image.IndexColorModel;
import java.util.List;
import org.glintery.colour.Srgb;

/** The shades in which the drills of a picture are drawn: eight for each of its colours. Immutable. */
final class DrillShades {
    static final int LIGHT = 0;
    static final int FACE = 1;
    static final int SECOND_FACE = 2;
    static final int SHADE = 3;
    static final int DARK = 4;
    static final int SPARK = 5;
    static final int PRINT = 6;
    static final int MARK = 7;
    private static final int EACH = 8;

    /** How many colours fit into the 256 of an indexed picture. */
    static final int MOST_COLOURS = 256 / EACH;

    private static final int WHITE = 0xFFFFFF;
    private static final int INK = 0x10141C;
    private static final int PAPER = 0xF4EFE4;

    private final int[] places;
    private final IndexColorModel model;

    DrillShades(DemoCard card, List<Integer> used) {
        places = new int[card.size()];
        byte[][] channels = new byte[3][EACH * used.size()];
        for (int i = 0; i < used.size(); i++) {
            int rgb = card.colour(used.get(i)).rgb();
            places[used.get(i)] = EACH * i;
            boolean pale = luma(rgb) > 120;
            int[] shades = {
                mixed(rgb, WHITE, 0.30),
                rgb,
                mixed(rgb, WHITE, 0.07),
                mixed(rgb, INK, 0.16),
                mixed(rgb, INK, 0.34),
                mixed(rgb, WHITE, 0.62),
                mixed(rgb, PAPER, 0.58),
                pale ? mixed(rgb, INK, 0.5) : mixed(rgb, INK, 0.1)
            };
            for (int shade = 0; shade < EACH; shade++) {
                for (int channel = 0; channel < 3; channel++) {
                    channels[channel][EACH * i + shade] = (byte) (shades[shade] >> 16 - 8 * channel);
                }
            }
        }
        model = new IndexColorModel(8, EACH * used.size(), channels[0], channels[1], channels[2]);
    }

    IndexColorModel model() {
        return model;
    }

    byte of(int colour, int shade) {
        return (byte) (places[colour] + shade);
    }

    private static double luma(int rgb) {
        Srgb colour = Srgb.ofRgb(rgb);
        return 0.3 * colour.red() + 0.6 * colour.green() + 0.1 * colour.blue();
    }

    private static int mixed(int first, int second, double share) {
        int sum = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            double channel = (first >> shift & 255) * (1 - share) + (second >> shift & 255) * share;
            sum |= (int) Math.round(channel) << shift;
        }
        return sum;
    }
}
