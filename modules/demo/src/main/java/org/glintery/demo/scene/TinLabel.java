package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** A label to go round a tea tin: bands of scales, a rope border, a ferry in its own field, the same at both ends. */
final class TinLabel implements Scene {
    @Override
    public void draw(Brush brush, Air air, Light light, SplittableRandom chance) {
        double tall = brush.tall();
        Color ground = Tone.mix(light.near(), light.dark(), 0.3);
        Color gold = Tone.mix(light.second(), light.pale(), 0.15);
        brush.sweep(0, tall, ground, Tone.dim(ground, 0.2));
        double edge = tall * 0.15;
        double scale = (tall - 2 * edge) / 7;
        for (int row = 0; row < 9; row++) {
            for (int i = -1; i < 16; i++) {
                double x = i * 1000.0 / 14 + (row % 2) * 1000.0 / 28;
                double y = tall - edge - row * scale * 0.9 + scale * 0.2;
                Color leaf = row % 3 == 0
                        ? light.middle()
                        : row % 3 == 1 ? Tone.mix(ground, light.sky(), 0.25) : Tone.mix(ground, light.accent(), 0.65);
                brush.disc(x, y, 1000.0 / 27, gold);
                brush.disc(x, y + 4, 1000.0 / 31, leaf);
                brush.disc(x, y + 12, 1000.0 / 50, Tone.mix(leaf, light.pale(), 0.35));
            }
        }
        border(brush, light, gold, 0, edge, false);
        border(brush, light, gold, tall - edge, edge, true);
        field(brush, air, light, gold, tall);
        for (double x : new double[] {150, 850}) {
            brush.blob(gold, x, tall * 0.26, x + 84, tall * 0.5, x, tall * 0.74, x - 84, tall * 0.5);
            brush.blob(light.accent(), x, tall * 0.31, x + 66, tall * 0.5, x, tall * 0.69, x - 66, tall * 0.5);
            brush.line(x, tall * 0.36, x, tall * 0.63, 9, light.pale());
            brush.line(x - 26, tall * 0.43, x + 26, tall * 0.43, 9, light.pale());
            brush.curve(
                    9,
                    light.pale(),
                    x - 42,
                    tall * 0.54,
                    x - 22,
                    tall * 0.62,
                    x,
                    tall * 0.645,
                    x + 22,
                    tall * 0.62,
                    x + 42,
                    tall * 0.54);
        }
        air.finish(0.25, 0.10);
    }

    private static void border(Brush brush, Light light, Color gold, double y, double h, boolean below) {
        brush.box(0, y, 1000, h, light.accent());
        brush.rope(-10, below ? y + h * 0.16 : y + h * 0.84, 1010, below ? y + h * 0.16 : y + h * 0.84, h * 0.26, gold);
        double mid = below ? y + h * 0.66 : y + h * 0.34;
        for (int i = 0; i < 28; i++) {
            double x = i * 1000.0 / 28 + 18;
            brush.poly(light.pale(), x - 14, mid, x, mid - h * 0.2, x + 14, mid, x, mid + h * 0.2);
        }
    }

    private static void field(Brush brush, Air air, Light light, Color gold, double tall) {
        double top = tall * 0.2;
        double bottom = tall * 0.8;
        double horizon = tall * 0.58;
        var oval = new java.awt.geom.RoundRectangle2D.Double(290, top, 420, bottom - top, 90, 90);
        brush.fill(gold, new java.awt.geom.RoundRectangle2D.Double(276, top - 12, 448, bottom - top + 24, 110, 110));
        brush.onlyIn(oval);
        brush.sweep(top, horizon, light.high(), light.sky(), light.horizon());
        brush.sweep(horizon, bottom, light.middle(), light.near());
        brush.blob(
                Tone.mix(light.far(), light.middle(), 0.3),
                280,
                horizon + 8,
                360,
                horizon - 30,
                470,
                horizon - 6,
                600,
                horizon - 40,
                720,
                horizon + 8);
        double s = (bottom - top) / 240;
        brush.poly(
                light.accent(),
                350,
                horizon - 8 * s,
                650,
                horizon - 8 * s,
                618,
                horizon + 36 * s,
                384,
                horizon + 36 * s);
        brush.box(390, horizon - 46 * s, 210, 40 * s, light.pale());
        brush.box(430, horizon - 78 * s, 120, 34 * s, light.pale());
        for (int i = 0; i < 5; i++) {
            brush.box(404 + i * 38, horizon - 36 * s, 20, 16 * s, light.dark());
        }
        brush.box(470, horizon - 118 * s, 36, 44 * s, light.second());
        brush.box(470, horizon - 118 * s, 36, 12 * s, light.dark());
        for (int i = 0; i < 4; i++) {
            brush.curve(
                    6,
                    light.pale(),
                    300,
                    horizon + (52 + i * 18) * s,
                    400,
                    horizon + (46 + i * 18) * s,
                    500,
                    horizon + (54 + i * 18) * s,
                    600,
                    horizon + (46 + i * 18) * s,
                    700,
                    horizon + (52 + i * 18) * s);
        }
        brush.anywhere();
    }
}
