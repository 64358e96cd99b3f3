package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** A band for a small enamel pail: rooftops along a quay over rows of waves, under a knotted line. */
final class PailLabel implements Scene {
    @Override
    public void draw(Brush brush, Air air, Light light, SplittableRandom chance) {
        double tall = brush.tall();
        Color enamel = light.lamps() ? Tone.mix(light.horizon(), light.pale(), 0.5) : light.pale();
        Color blue = Tone.mix(Tone.of(0x24538F), light.near(), 0.3);
        double ground = tall * 0.62;
        brush.sweep(0, ground, Tone.mix(enamel, light.sky(), 0.65), enamel);
        brush.box(0, 0, 1000, tall * 0.085, blue);
        double x = -20;
        int i = 0;
        Color[] walls = {
            light.accent(),
            light.second(),
            blue,
            Tone.mix(light.middle(), light.pale(), 0.3),
            Tone.mix(light.accent(), light.second(), 0.5)
        };
        while (x < 1000) {
            double w = 70 + chance.nextInt(3) * 16;
            double h = tall * (0.16 + 0.05 * chance.nextInt(4));
            Color wall = walls[i++ % walls.length];
            brush.box(x, ground - h, w, h, wall);
            brush.poly(
                    Tone.dim(wall, 0.5), x - 6, ground - h, x + w / 2, ground - h - tall * 0.10, x + w + 6, ground - h);
            brush.box(x + w * 0.2, ground - h + 18, w * 0.22, tall * 0.06, enamel);
            brush.box(x + w * 0.58, ground - h + 18, w * 0.22, tall * 0.06, enamel);
            brush.box(x + w * 0.36, ground - tall * 0.07, w * 0.28, tall * 0.07, Tone.dim(wall, 0.6));
            x += w + 8;
        }
        brush.curve(
                8,
                light.dark(),
                -20,
                tall * 0.13,
                160,
                tall * 0.19,
                340,
                tall * 0.13,
                500,
                tall * 0.19,
                660,
                tall * 0.13,
                840,
                tall * 0.19,
                1020,
                tall * 0.13);
        for (int k = 0; k < 17; k++) {
            double fx = k * 62.5;
            double fy = tall * (0.16 - 0.03 * Math.cos(fx / 1000 * 6 * Math.PI));
            brush.poly(walls[k % 4], fx - 20, fy, fx + 20, fy, fx, fy + tall * 0.085);
        }
        for (int row = 0; row < 4; row++) {
            double y = ground + row * tall * 0.095;
            Color water = Tone.mix(light.sky(), blue, 0.25 + row * 0.25);
            brush.box(0, y + tall * 0.03, 1000, tall, water);
            for (int k = -1; k < 13; k++) {
                double wx = k * 83.4 + (row % 2) * 41.7;
                brush.oval(wx + 41.7, y + tall * 0.035, 45, tall * 0.035, water);
                brush.curve(6, enamel, wx + 4, y + tall * 0.03, wx + 41.7, y + tall * 0.004, wx + 79, y + tall * 0.03);
            }
        }
        brush.box(0, tall * 0.93, 1000, tall * 0.07, blue);
        brush.rope(-10, tall * 0.93, 1010, tall * 0.93, tall * 0.04, Tone.mix(light.second(), enamel, 0.3));
        air.finish(0.2, 0.10);
    }
}
