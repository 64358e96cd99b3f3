package org.glintery.demo;

import java.awt.Color;
import java.util.SplittableRandom;

/** A net loft with mirrored windows; one pane of a pair is in the wrong shade. */
final class NetLoft extends Scene {
    @Override
    void draw(Light light, SplittableRandom chance) {
        band(0, tall(), light.sky(), light.horizon());
        shape(light.near(), 0, tall() * 0.30, 500, tall() * 0.06, 1000, tall() * 0.30, 1000, tall() * 0.34, 500, tall() * 0.10, 0, tall() * 0.34);
        shape(mix(light.middle(), light.accent(), 0.25), 40, tall() * 0.32, 500, tall() * 0.10, 960, tall() * 0.32, 960, tall(), 40, tall());
        for (int i = 0; i < 22; i++) {
            line(40 + i * 42, tall() * 0.20, 40 + i * 42, tall(), 3, mix(light.middle(), light.near(), 0.5));
        }
        for (int side = -1; side <= 1; side += 2) {
            for (int r = 0; r < 3; r++) {
                double x = 500 + side * 240 - 110;
                double y = tall() * (0.36 + r * 0.20);
                box(x - 14, y - 14, 248, tall() * 0.155 + 28, light.pale());
                for (int a = 0; a < 3; a++) {
                    for (int b = 0; b < 2; b++) {
                        int mirrored = side < 0 ? a : 2 - a;
                        boolean wrong = side > 0 && r == 1 && mirrored == 1 && b == 1;
                        Color pane = wrong ? light.accent() : mix(light.sky(), light.horizon(), (mirrored + b + r) % 4 / 4.0);
                        box(x + a * 75, y + b * tall() * 0.08, 68, tall() * 0.074, pane);
                    }
                }
            }
        }
        for (int i = 0; i < 16; i++) {
            line(430 + i * 9, tall() * 0.24, 400 + i * 13, tall() * 0.98, 3, mix(light.pale(), light.middle(), 0.3));
            line(420, tall() * (0.28 + i * 0.043), 590, tall() * (0.30 + i * 0.043), 2.5, mix(light.pale(), light.middle(), 0.3));
        }
    }
}
