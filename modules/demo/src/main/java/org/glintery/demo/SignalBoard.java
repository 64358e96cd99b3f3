package org.glintery.demo;

import java.awt.Color;
import java.util.SplittableRandom;

/** A board of signal flags in an arrangement of our own. */
final class SignalBoard extends Scene {
    @Override
    void draw(Light light, SplittableRandom chance) {
        band(0, tall(), light.sky(), light.horizon());
        box(60, 60, 880, tall() - 120, light.near());
        box(84, 84, 832, tall() - 168, mix(light.pale(), light.horizon(), 0.4));
        int rows = (int) ((tall() - 200) / 200);
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < 4; c++) {
                double x = 120 + c * 196;
                double y = 116 + r * (tall() - 220.0) / rows;
                Color first = chance.nextInt(2) == 0 ? light.accent() : light.middle();
                Color second = chance.nextInt(3) == 0 ? light.near() : light.pale();
                box(x - 4, y - 4, 168, 128, light.near());
                box(x, y, 160, 120, first);
                switch (chance.nextInt(5)) {
                    case 0 -> box(x, y + 40, 160, 40, second);
                    case 1 -> box(x + 80, y, 80, 120, second);
                    case 2 -> shape(second, x, y, x + 160, y + 60, x, y + 120);
                    case 3 -> {
                        box(x, y, 80, 60, second);
                        box(x + 80, y + 60, 80, 60, second);
                    }
                    default -> box(x + 40, y + 30, 80, 60, second);
                }
            }
        }
        line(60, 60, 940, 60, 12, light.accent());
    }
}
