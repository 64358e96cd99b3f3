package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** Boats at their moorings behind a breakwater with its light. */
final class Breakwater implements Scene {
    @Override
    public void draw(Brush brush, Air air, Light light, SplittableRandom chance) {
        double tall = brush.tall();
        double horizon = tall * 0.44;
        var shore = new Shore(brush, air, light, chance);
        shore.sky(horizon, 0.65);
        brush.glow(700, horizon, 620, light.lamps() ? light.accent() : Tone.lift(light.horizon(), 0.4), 0.4);
        shore.hills(horizon, tall * 0.13, 0.1);
        shore.hills(horizon, tall * 0.07, 0.45);
        wall(brush, light, chance, tall, horizon);
        air.water(horizon + 26, tall, light.middle(), light.dark(), 34, 0.42);
        air.mist(horizon + 30, tall * 0.05, light.horizon(), 0.35);
        shore.glints(horizon + 40, tall, Tone.lift(light.horizon(), 0.2), 120);
        double[][] moorings = {
            {700, 0.56, 0.55},
            {300, 0.60, 0.62},
            {840, 0.69, 0.8},
            {500, 0.735, 0.9},
            {170, 0.80, 1.05},
            {720, 0.885, 1.25}
        };
        Color[] hulls = {
            light.pale(),
            light.accent(),
            light.second(),
            light.pale(),
            Tone.mix(light.middle(), light.pale(), 0.2),
            light.accent()
        };
        for (int i = 0; i < moorings.length; i++) {
            boat(brush, light, moorings[i][0], tall * moorings[i][1], moorings[i][2], hulls[i], i % 2 == 0);
        }
        air.finish(0.45, 0.14);
    }

    private static void wall(Brush brush, Light light, SplittableRandom chance, double tall, double horizon) {
        Color stone = Tone.mix(light.near(), light.far(), 0.25);
        brush.poly(stone, 0, horizon - 30, 560, horizon - 14, 610, horizon + 30, 0, horizon + 30);
        for (int i = 0; i < 60; i++) {
            double x = chance.nextDouble() * 590;
            double y = horizon - 22 + chance.nextDouble() * 48;
            brush.oval(
                    x,
                    y,
                    14 + 8 * chance.nextDouble(),
                    10,
                    Tone.mix(stone, chance.nextBoolean() ? light.pale() : light.dark(), 0.3 * chance.nextDouble()));
        }
        double x = 528;
        double top = horizon - tall * 0.19;
        Color tower = light.lamps() ? Tone.mix(light.pale(), light.middle(), 0.4) : light.pale();
        brush.poly(tower, x - 26, horizon - 8, x + 26, horizon - 8, x + 17, top, x - 17, top);
        brush.poly(
                light.accent(), x - 23, horizon - 50, x + 23, horizon - 50, x + 20, horizon - 94, x - 20, horizon - 94);
        brush.poly(Tone.clear(light.dark(), 0.35), x + 6, horizon - 8, x + 26, horizon - 8, x + 17, top, x + 4, top);
        brush.box(x - 27, top - 8, 54, 12, light.dark());
        brush.box(x - 15, top - 38, 30, 32, Tone.lift(light.lamp(), 0.3));
        brush.poly(light.accent(), x - 24, top - 38, x, top - 66, x + 24, top - 38);
        if (light.lamps()) {
            brush.poly(Tone.clear(light.lamp(), 0.20), x, top - 24, 1000, top - 120, 1000, top + 30);
            brush.glow(x, top - 22, 190, light.lamp(), 0.8);
        }
    }

    static void boat(Brush brush, Light light, double x, double y, double s, Color hull, boolean sloop) {
        Color paint = light.lamps() ? Tone.mix(hull, light.near(), 0.3) : hull;
        Color mast = Tone.mix(light.dark(), light.second(), 0.25);
        brush.blob(
                Tone.clear(Tone.dim(paint, 0.45), 0.6),
                x - 92 * s,
                y + 40 * s,
                x + 84 * s,
                y + 40 * s,
                x + 66 * s,
                y + 84 * s,
                x - 60 * s,
                y + 88 * s);
        brush.line(x, y + 60 * s, x + 8 * s, y + 230 * s, 6 * s, Tone.clear(mast, 0.4));
        if (sloop) {
            brush.poly(
                    Tone.mix(light.pale(), light.second(), 0.25),
                    x + 7 * s,
                    y - 10 * s,
                    x + 96 * s,
                    y - 22 * s,
                    x + 10 * s,
                    y - 60 * s);
        }
        brush.line(x, y, x, y - 250 * s, 8 * s, mast);
        brush.line(x, y - 24 * s, x + 104 * s, y - 30 * s, 7 * s, mast);
        brush.line(x, y - 244 * s, x + 104 * s, y, 2.5 * s, mast);
        brush.line(x, y - 244 * s, x - 104 * s, y - 8 * s, 2.5 * s, mast);
        brush.box(x - 62 * s, y - 42 * s, 56 * s, 44 * s, light.pale());
        brush.box(x - 70 * s, y - 50 * s, 72 * s, 11 * s, Tone.dim(paint, 0.3));
        brush.box(x - 50 * s, y - 32 * s, 32 * s, 18 * s, light.pane(true));
        brush.blob(
                paint,
                x - 116 * s,
                y - 14 * s,
                x - 20 * s,
                y + 6 * s,
                x + 112 * s,
                y - 12 * s,
                x + 84 * s,
                y + 42 * s,
                x - 84 * s,
                y + 44 * s);
        brush.blob(
                Tone.dim(paint, 0.45),
                x - 96 * s,
                y + 22 * s,
                x + 94 * s,
                y + 20 * s,
                x + 80 * s,
                y + 44 * s,
                x - 82 * s,
                y + 46 * s);
        brush.curve(6 * s, light.pale(), x - 112 * s, y - 8 * s, x - 20 * s, y + 10 * s, x + 108 * s, y - 6 * s);
    }
}
