package org.glintery.demo;

import java.awt.Color;
import java.util.SplittableRandom;

/** The rope-walk: a long shed in perspective, ropes running to the far door. */
final class RopeWalk extends Scene {
    @Override
    void draw(Light light, SplittableRandom chance) {
        double far = tall() * 0.46;
        band(0, tall(), mix(light.near(), light.middle(), 0.4), light.near());
        for (int i = 0; i <= 12; i++) {
            double x = i * 1000.0 / 12;
            shape(mix(light.middle(), light.near(), i % 2 * 0.5 + 0.2), x, tall(), x + 84, tall(), 500 + (x + 84 - 500) * 0.12, far + 70, 500 + (x - 500) * 0.12, far + 70);
        }
        for (int i = 0; i < 7; i++) {
            double near = Math.pow(1 - i / 8.0, 2);
            double half = 60 + near * 520;
            double top = far - 60 - near * far * 0.9;
            Color beam = mix(light.near(), light.far(), i / 9.0);
            line(500 - half, tall() * (0.5 + near * 0.6), 500 - half, top, 10 + near * 34, beam);
            line(500 + half, tall() * (0.5 + near * 0.6), 500 + half, top, 10 + near * 34, beam);
            line(500 - half, top, 500, top - 30 - near * 120, 8 + near * 26, beam);
            line(500 + half, top, 500, top - 30 - near * 120, 8 + near * 26, beam);
        }
        shape(light.horizon(), 450, far + 72, 450, far - 30, 500, far - 66, 550, far - 30, 550, far + 72);
        shape(light.pale(), 468, far + 72, 468, far - 14, 500, far - 40, 532, far - 14, 532, far + 72);
        for (int i = 0; i < 5; i++) {
            double x = 140 + i * 180;
            for (int k = 0; k < 3; k++) {
                line(x + k * 14, tall(), 490 + i * 5, far + 40, 13, mix(light.accent(), light.pale(), 0.2 + k * 0.25));
            }
        }
        for (int i = 0; i < 26; i++) {
            disc(chance.nextDouble() * 1000, chance.nextDouble() * tall(), 3 + chance.nextDouble() * 5, mix(light.horizon(), light.middle(), 0.4));
        }
    }
}
