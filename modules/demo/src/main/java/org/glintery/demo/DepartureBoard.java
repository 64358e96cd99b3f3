package org.glintery.demo;

import java.awt.Color;
import java.util.SplittableRandom;

/** A ferry at the slip and its departures board. */
final class DepartureBoard extends Scene {
    @Override
    void draw(Light light, SplittableRandom chance) {
        double horizon = tall() * 0.46;
        skyAndWater(light, horizon, chance);
        houses(light, horizon + 4, 46, chance);
        shape(light.pale(), 60, tall() * 0.56, 700, tall() * 0.54, 640, tall() * 0.66, 120, tall() * 0.67);
        shape(light.accent(), 92, tall() * 0.625, 660, tall() * 0.61, 640, tall() * 0.66, 120, tall() * 0.67);
        box(150, tall() * 0.47, 420, tall() * 0.085, light.pale());
        box(190, tall() * 0.40, 240, tall() * 0.075, mix(light.pale(), light.far(), 0.25));
        for (int i = 0; i < 9; i++) {
            box(170 + i * 44, tall() * 0.49, 26, tall() * 0.03, light.near());
        }
        box(330, tall() * 0.33, 56, tall() * 0.08, light.accent());
        box(330, tall() * 0.33, 56, tall() * 0.02, light.near());
        shape(light.near(), 0, tall(), 0, tall() * 0.80, 1000, tall() * 0.76, 1000, tall());
        box(700, tall() * 0.34, 250, tall() * 0.34, light.near());
        box(716, tall() * 0.352, 218, tall() * 0.316, mix(light.near(), Color.BLACK, 0.35));
        for (int r = 0; r < 8; r++) {
            double y = tall() * 0.37 + r * tall() * 0.036;
            for (int c = 0; c < 11; c++) {
                if (c != 5 && chance.nextInt(7) > 0) {
                    box(728 + c * 18, y, 12, tall() * 0.018, r == 0 ? light.pale() : light.accent());
                }
            }
        }
        line(740, tall() * 0.68, 740, tall() * 0.86, 16, light.near());
        line(910, tall() * 0.68, 910, tall() * 0.86, 16, light.near());
    }
}
