package org.glintery.demo;

import java.util.SplittableRandom;

/** A label to go round a tin: bands, waves and a small ferry. */
final class TinLabel extends Scene {
    @Override
    void draw(Light light, SplittableRandom chance) {
        band(0, tall(), light.near(), light.middle());
        for (int r = 0; r < 4; r++) {
            double y = tall() * (0.16 + r * 0.23);
            for (int i = 0; i < 26; i++) {
                disc(i * 42, y, 24, r % 2 == 0 ? light.accent() : light.far());
                disc(i * 42, y + 8, 20, light.pale());
                disc(i * 42, y + 14, 14, light.middle());
            }
        }
        box(0, 0, 1000, tall() * 0.07, light.accent());
        box(0, tall() * 0.93, 1000, tall() * 0.07, light.accent());
        for (int i = 0; i < 20; i++) {
            shape(light.pale(), i * 52, tall() * 0.07, i * 52 + 26, tall() * 0.02, i * 52 + 52, tall() * 0.07);
            shape(light.pale(), i * 52, tall() * 0.93, i * 52 + 26, tall() * 0.98, i * 52 + 52, tall() * 0.93);
        }
        box(330, tall() * 0.28, 340, tall() * 0.44, light.horizon());
        shape(light.near(), 370, tall() * 0.55, 640, tall() * 0.55, 610, tall() * 0.63, 400, tall() * 0.63);
        box(420, tall() * 0.46, 160, tall() * 0.09, light.pale());
        box(480, tall() * 0.37, 40, tall() * 0.09, light.accent());
    }
}
