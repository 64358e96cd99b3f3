package org.glintery.demo;

import java.awt.Color;
import java.util.SplittableRandom;

/** Boats behind a breakwater. */
final class Breakwater extends Scene {
    @Override
    void draw(Light light, SplittableRandom chance) {
        double horizon = tall() * 0.40;
        skyAndWater(light, horizon, chance);
        houses(light, horizon + 4, 40, chance);
        shape(light.near(), 0, tall() * 0.52, 620, tall() * 0.50, 640, tall() * 0.54, 0, tall() * 0.60);
        for (int i = 0; i < 26; i++) {
            disc(i * 25, tall() * 0.58 - i * 1.6, 16 + chance.nextDouble() * 10, mix(light.near(), light.far(), chance.nextDouble() * 0.6));
        }
        box(600, tall() * 0.36, 34, tall() * 0.15, light.pale());
        box(600, tall() * 0.40, 34, tall() * 0.03, light.accent());
        box(606, tall() * 0.335, 22, tall() * 0.03, light.near());
        for (int i = 0; i < 5; i++) {
            double x = 120 + i * 190 + chance.nextDouble() * 40;
            double y = tall() * (0.68 + 0.06 * (i % 3));
            Color hull = i % 2 == 0 ? light.accent() : light.pale();
            shape(hull, x - 80, y, x + 90, y - 6, x + 64, y + 40, x - 60, y + 42);
            shape(mix(hull, light.near(), 0.5), x - 60, y + 42, x + 64, y + 40, x + 50, y + 78, x - 46, y + 80);
            line(x, y, x, y - 190, 6, light.near());
            line(x, y - 170, x + 70, y - 10, 2.5, light.near());
            line(x, y - 170, x - 66, y - 6, 2.5, light.near());
            line(x + 4, y + 44, x + 10, y + 150, 5, mix(light.near(), light.middle(), 0.5));
        }
    }
}
