package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** A pilot boat climbing a swell. */
final class PilotBoat implements Scene {
    @Override
    public void draw(Brush brush, Air air, Light light, SplittableRandom chance) {
        double tall = brush.tall();
        var shore = new Shore(brush, air, light, chance);
        shore.sky(tall * 0.62, 0.95);
        brush.glow(700, tall * 0.34, 520, Tone.lift(light.horizon(), 0.4), 0.65);
        for (int i = 0; i < 3; i++) {
            wave(
                    brush,
                    light,
                    tall,
                    0.48 + i * 0.06,
                    0.028,
                    i * 1.9 + 0.4,
                    Tone.mix(light.far(), light.middle(), 0.3 + i * 0.3));
        }
        boat(brush, shore, light, tall);
        for (int i = 0; i < 5; i++) {
            Color water = Tone.mix(light.middle(), light.dark(), 0.2 + i * 0.18);
            wave(brush, light, tall, 0.655 + i * 0.075, 0.045 + 0.006 * i, i * 2.2 + 1.1, water);
            spray(brush, light, chance, tall, 0.655 + i * 0.075, i);
        }
        if (!light.lamps()) {
            air.mist(tall * 0.5, tall * 0.06, light.cloud(), 0.35);
        }
        air.finish(0.5, 0.14);
    }

    private static double height(double x, double tall, double level, double size, double phase) {
        double t = x / 1000 * 2 * Math.PI;
        return tall * (level - size * (0.75 * Math.sin(1.25 * t + phase) + 0.35 * Math.sin(2.7 * t + 1.7 * phase)));
    }

    private static void wave(
            Brush brush, Light light, double tall, double level, double size, double phase, Color water) {
        int steps = 30;
        double[] points = new double[2 * (steps + 3)];
        for (int i = 0; i <= steps; i++) {
            double x = -30 + i * 1060.0 / steps;
            points[2 * i] = x;
            points[2 * i + 1] = height(x, tall, level, size, phase);
        }
        points[2 * steps + 2] = 1060;
        points[2 * steps + 3] = tall + 60;
        points[2 * steps + 4] = -60;
        points[2 * steps + 5] = tall + 60;
        double top = tall * (level - size);
        brush.fill(
                Brush.downwards(
                        top, tall * (level + 0.16), Tone.mix(water, light.sky(), 0.45), water, Tone.dim(water, 0.3)),
                Curves.through(true, points));
        brush.curve(9, Tone.mix(light.pale(), water, 0.15), java.util.Arrays.copyOf(points, 2 * steps + 2));
        for (int k = 1; k < 4; k++) {
            double[] line = java.util.Arrays.copyOf(points, 2 * steps + 2);
            for (int i = 0; i <= steps; i++) {
                line[2 * i + 1] += 20 * k + 9 * Math.sin(i * 0.9 + k + phase);
            }
            brush.curve(5, Tone.clear(Tone.mix(light.sky(), light.pale(), 0.4), 0.5 - 0.12 * k), line);
        }
    }

    private static void boat(Brush brush, Shore shore, Light light, double tall) {
        double x = 430;
        double y = tall * 0.545;
        Color hull = light.accent();
        brush.blob(
                hull, x - 250, y + 70, x - 235, y + 10, x + 60, y - 38, x + 300, y - 130, x + 250, y + 10, x + 140,
                y + 110, x - 180, y + 130);
        brush.blob(
                Tone.dim(hull, 0.5),
                x - 245,
                y + 64,
                x + 60,
                y + 22,
                x + 262,
                y - 30,
                x + 140,
                y + 110,
                x - 180,
                y + 130);
        brush.curve(11, light.pale(), x - 238, y + 8, x + 60, y - 36, x + 296, y - 126);
        brush.poly(light.pale(), x - 150, y - 4, x - 160, y - 120, x + 34, y - 148, x + 66, y - 36);
        brush.poly(
                Tone.mix(light.pale(), light.middle(), 0.4),
                x - 150,
                y - 4,
                x - 160,
                y - 120,
                x - 118,
                y - 126,
                x - 108,
                y - 10);
        brush.poly(light.second(), x - 178, y - 118, x - 182, y - 142, x + 44, y - 174, x + 50, y - 148);
        for (int i = 0; i < 3; i++) {
            double wx = x - 96 + i * 46;
            brush.poly(
                    light.pane(true),
                    wx,
                    y - 108 - i * 6.5,
                    wx + 32,
                    y - 112 - i * 6.5,
                    wx + 36,
                    y - 70 - i * 6.5,
                    wx + 4,
                    y - 66 - i * 6.5);
        }
        brush.line(x - 84, y - 150, x - 100, y - 300, 9, light.dark());
        brush.line(x - 100, y - 290, x + 284, y - 122, 3, light.dark());
        brush.poly(light.accent(), x - 99, y - 296, x - 178, y - 270, x - 170, y - 262, x - 94, y - 250);
        shore.lamp(x - 101, y - 306, 10);
        if (light.lamps()) {
            brush.poly(Tone.clear(light.lamp(), 0.24), x + 50, y - 150, 1000, y - 330, 1000, y - 120);
        }
        brush.line(x + 120, y - 46, x + 112, y - 90, 5, light.pale());
        brush.line(x + 200, y - 80, x + 190, y - 122, 5, light.pale());
        brush.line(x + 66, y - 74, x + 284, y - 158, 4, light.pale());
    }

    private static void spray(Brush brush, Light light, SplittableRandom chance, double tall, double level, int which) {
        double x0 = which == 0 ? 690 : chance.nextDouble() * 900;
        int drops = which == 0 ? 90 : 26;
        for (int i = 0; i < drops; i++) {
            double out = chance.nextDouble();
            double x = x0 + (chance.nextDouble() - 0.4) * (which == 0 ? 260 : 160);
            double y = tall * level - out * out * (which == 0 ? 190 : 70);
            brush.disc(x, y, 3 + 9 * (1 - out) * chance.nextDouble(), Tone.clear(Tone.lift(light.pale(), 0.4), 0.8));
        }
    }
}
