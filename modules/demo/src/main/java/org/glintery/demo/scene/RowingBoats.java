package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** Rowing boats on their painters, seen from the quay above. */
final class RowingBoats implements Scene {
    @Override
    public void draw(Brush brush, Air air, Light light, SplittableRandom chance) {
        double tall = brush.tall();
        Color deep = Tone.mix(light.near(), Tone.of(0x155E75), light.lamps() ? 0.2 : 0.45);
        brush.sweep(0, tall, Tone.mix(deep, light.sky(), 0.25), Tone.dim(deep, 0.25));
        air.swell(0, tall, Tone.dim(deep, 0.2), Tone.mix(deep, light.sky(), 0.5), 1.1);
        for (int i = 0; i < 70; i++) {
            double x = chance.nextDouble() * 1000;
            double y = chance.nextDouble() * tall;
            brush.curve(4, Tone.clear(Tone.lift(light.sky(), 0.5), 0.4), x, y, x + 22, y - 7, x + 44, y, x + 70, y - 5);
        }
        Color[] paints = {
            Tone.mix(Tone.of(0x2F7FB8), light.middle(), 0.2),
            light.pale(),
            light.accent(),
            light.second(),
            Tone.mix(Tone.of(0x2E7D6B), light.near(), 0.2)
        };
        int rows = (int) Math.max(2, Math.round((tall - 120) / 400));
        double step = (tall - 110) / rows;
        for (int row = 0; row < rows; row++) {
            for (int i = 0; i < 5; i++) {
                double x = 118 + i * 192 + (row % 2) * 10;
                double y = 110 + row * step + step * 0.5 + 24 * Math.sin(i * 2.1 + row);
                boat(brush, light, x, y, Math.min(1, step / 400), paints[(i * 2 + row * 3) % 5], (i + row) % 3);
            }
        }
        brush.box(0, 0, 1000, 84, Tone.mix(light.pale(), Tone.of(0x8F8577), 0.6));
        air.worn(0, 0, 1000, 84, 18, 2, 0.5);
        brush.box(0, 84, 1000, 16, light.dark());
        for (int i = 0; i < 5; i++) {
            brush.disc(118 + i * 192, 54, 24, light.dark());
            brush.disc(114 + i * 192, 48, 14, Tone.mix(light.dark(), light.pale(), 0.4));
        }
        brush.glow(150, 60, 900, light.lamps() ? light.lamp() : light.pale(), 0.25);
        air.finish(0.5, 0.12);
    }

    private static void boat(Brush brush, Light light, double x, double y, double s, Color paint, int oars) {
        Color wood = Tone.mix(Tone.of(0xB98552), light.near(), light.lamps() ? 0.4 : 0.08);
        double h = 160 * s;
        double w = 66;
        brush.curve(5, Tone.mix(light.second(), light.pale(), 0.5), x, y - h, x + 10, y - h - 50, x - 4, y - h - 110);
        brush.fill(Tone.clear(Tone.of(0x04121C), 0.5), hull(x + 24, y + 22, w, h));
        brush.fill(Tone.dim(paint, 0.3), hull(x, y, w, h));
        brush.fill(paint, hull(x - 4, y - 4, w - 8, h - 8));
        brush.fill(Tone.dim(wood, 0.45), hull(x - 2, y, w - 20, h - 26));
        brush.onlyIn(hull(x - 2, y, w - 20, h - 26));
        for (int i = -3; i <= 3; i++) {
            brush.line(x + i * 14, y - h, x + i * 14, y + h, 5, Tone.dim(wood, 0.62));
        }
        brush.box(x - w, y - h, w * 2, h * 0.42, wood);
        for (double seat : new double[] {-0.28, 0.16, 0.58}) {
            brush.box(x - w, y + seat * h + 12, w * 2, 12, Tone.clear(Color.BLACK, 0.4));
            brush.box(x - w, y + seat * h - 16, w * 2, 30 * s + 6, wood);
            brush.box(x - w, y + seat * h - 16, w * 2, 6, Tone.lift(wood, 0.35));
        }
        brush.anywhere();
        if (oars > 0) {
            double lean = oars == 1 ? 16 : -16;
            brush.line(x - lean, y - h * 0.7, x + lean, y + h * 0.55, 9, Tone.lift(wood, 0.3));
            brush.line(x + lean, y + h * 0.4, x + lean * 1.3, y + h * 0.72, 20, light.pale());
        }
    }

    private static java.awt.Shape hull(double x, double y, double w, double h) {
        return Curves.through(
                true,
                x,
                y - h,
                x + w * 0.72,
                y - h * 0.5,
                x + w,
                y + h * 0.1,
                x + w * 0.74,
                y + h * 0.86,
                x,
                y + h * 0.94,
                x - w * 0.74,
                y + h * 0.86,
                x - w,
                y + h * 0.1,
                x - w * 0.72,
                y - h * 0.5);
    }
}
