package org.glintery.demo;

import org.glintery.colour.Srgb;

/** The nearest colour of the card for every colour of five bits a channel: looked up instead of searched. */
final class NearestTable {
    private final DemoCard card;
    private final short[] nearest = new short[1 << 15];

    NearestTable(DemoCard card) {
        this.card = card;
        java.util.Arrays.fill(nearest, (short) -1);
    }

    int of(int rgb) {
        int red = rgb >> 19 & 31;
        int green = rgb >> 11 & 31;
        int blue = rgb >> 3 & 31;
        int key = red << 10 | green << 5 | blue;
        if (nearest[key] < 0) {
            nearest[key] = (short) card.nearest(new Srgb(red * 255 / 31, green * 255 / 31, blue * 255 / 31).lab());
        }
        return nearest[key];
    }
}
