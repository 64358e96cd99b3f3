package org.glintery.demo;

import java.util.SplittableRandom;

/** A boatyard crane over a hull on the slip. */
final class BoatyardCrane extends Scene {
    @Override
    void draw(Light light, SplittableRandom chance) {
        double horizon = tall() * 0.62;
        skyAndWater(light, horizon, chance);
        houses(light, horizon + 6, 60, chance);
        shape(light.near(), 0, tall(), 0, tall() * 0.86, 1000, tall() * 0.74, 1000, tall());
        shape(mix(light.accent(), light.near(), 0.15), 90, tall() * 0.72, 560, tall() * 0.70, 500, tall() * 0.84, 170, tall() * 0.86);
        shape(light.pale(), 90, tall() * 0.72, 560, tall() * 0.70, 552, tall() * 0.725, 104, tall() * 0.745);
        box(230, tall() * 0.62, 180, tall() * 0.09, light.pale());
        for (int i = 0; i < 4; i++) {
            box(250 + i * 40, tall() * 0.645, 22, tall() * 0.03, light.middle());
        }
        double top = tall() * 0.12;
        line(760, tall() * 0.80, 690, top, 14, light.near());
        line(860, tall() * 0.78, 690, top, 14, light.near());
        line(690, top, 250, tall() * 0.26, 16, light.near());
        line(690, top, 940, tall() * 0.20, 16, light.near());
        for (int i = 0; i < 9; i++) {
            double t = i / 9.0;
            line(690 - 440 * t, top + (tall() * 0.14) * t, 690 - 440 * (t + 0.055), top + tall() * 0.14 * (t + 0.055) + 34, 5, light.accent());
            line(760 - 70 * t, tall() * 0.80 - (tall() * 0.68) * t, 860 - 170 * t, tall() * 0.78 - tall() * 0.66 * t, 5, light.middle());
        }
        line(270, tall() * 0.262, 270, tall() * 0.60, 5, light.near());
        box(880, tall() * 0.20, 70, tall() * 0.07, light.accent());
    }
}
