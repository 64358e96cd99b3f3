package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** Oilskins on their pegs in the boathouse passage, boots below. */
final class Oilskins implements Scene {
    @Override
    public void draw(Brush brush, Air air, Light light, SplittableRandom chance) {
        double tall = brush.tall();
        double rail = tall * 0.24;
        double floor = tall * 0.86;
        Color wall = Tone.mix(light.sky(), light.pale(), light.lamps() ? 0.08 : 0.55);
        Color panel = Tone.mix(light.middle(), light.near(), light.lamps() ? 0.6 : 0.15);
        brush.sweep(0, rail, Tone.dim(wall, 0.1), wall);
        brush.sweep(rail, floor, panel, Tone.dim(panel, 0.2));
        for (int i = 0; i < 15; i++) {
            brush.box(i * 70, rail, 6, floor - rail, Tone.dim(panel, 0.4));
            brush.box(i * 70 + 6, rail, 4, floor - rail, Tone.lift(panel, 0.2));
        }
        brush.sweep(
                floor,
                tall,
                Tone.mix(Tone.of(0x8A6544), light.near(), 0.3),
                Tone.mix(Tone.of(0x5C402B), light.near(), 0.3));
        for (int i = 0; i < 4; i++) {
            brush.line(0, floor + 20 + i * i * 14, 1000, floor + 20 + i * i * 14, 4, Tone.clear(Color.BLACK, 0.35));
        }
        air.worn(0, 0, 1000, tall, 16, 4, 0.24);
        brush.poly(
                Tone.clear(light.lamps() ? light.lamp() : Color.WHITE, 0.20),
                0,
                tall * 0.05,
                420,
                tall * 0.05,
                1000,
                floor,
                480,
                floor);
        brush.box(0, rail - 22, 1000, 46, Tone.mix(light.pale(), light.second(), 0.25));
        brush.box(0, rail + 18, 1000, 8, Tone.clear(Color.BLACK, 0.4));
        Color[] cloth = {
            light.second(),
            light.accent(),
            Tone.mix(Tone.of(0x1F5A88), light.near(), 0.2),
            Tone.mix(light.second(), light.pale(), 0.35),
            Tone.mix(Tone.of(0x2E7D64), light.near(), 0.2)
        };
        for (int i = 0; i < 5; i++) {
            double x = 110 + i * 196;
            double length = tall * (0.40 + 0.05 * ((i * 3) % 4) / 3.0);
            coat(brush, light, x, rail, length, cloth[i], i % 2 == 0);
            if (i != 3) {
                boots(brush, light, x, floor + 26, cloth[(i + 2) % 5]);
            }
        }
        brush.rope(640, floor + 60, 820, floor + 66, 24, light.second());
        air.finish(0.5, 0.12);
    }

    private static void coat(
            Brush brush, Light light, double x, double peg, double length, Color colour, boolean hood) {
        double foot = peg + length;
        var shape = Curves.through(
                true,
                x,
                peg + 8,
                x + 34,
                peg + 30,
                x + 74,
                peg + 60,
                x + 92,
                peg + length * 0.55,
                x + 72,
                peg + length * 0.62,
                x + 70,
                peg + length * 0.5,
                x + 78,
                foot,
                x + 20,
                foot + 12,
                x - 30,
                foot + 8,
                x - 78,
                foot - 2,
                x - 70,
                peg + length * 0.5,
                x - 74,
                peg + length * 0.62,
                x - 92,
                peg + length * 0.54,
                x - 74,
                peg + 60,
                x - 34,
                peg + 30);
        var shadow = java.awt.geom.AffineTransform.getTranslateInstance(26, 16).createTransformedShape(shape);
        brush.fill(Tone.clear(Color.BLACK, 0.42), shadow);
        brush.fill(colour, shape);
        brush.onlyIn(shape);
        brush.poly(Tone.clear(Color.BLACK, 0.26), x + 26, peg, x + 120, peg, x + 120, foot + 20, x + 40, foot + 20);
        brush.poly(Tone.clear(Color.WHITE, 0.32), x - 56, peg + 60, x - 34, peg + 50, x - 44, foot, x - 66, foot);
        brush.curve(6, Tone.dim(colour, 0.4), x - 16, peg + 90, x - 22, peg + length * 0.6, x - 14, foot);
        brush.curve(6, Tone.dim(colour, 0.4), x + 44, peg + 110, x + 36, peg + length * 0.6, x + 46, foot);
        brush.box(x - 4, peg + 60, 9, length, Tone.dim(colour, 0.5));
        brush.anywhere();
        for (int i = 0; i < 4; i++) {
            brush.disc(x + 12, peg + 100 + i * length * 0.17, 8, Tone.lift(light.pale(), 0.2));
        }
        if (hood) {
            brush.blob(
                    Tone.dim(colour, 0.18),
                    x - 44,
                    peg + 54,
                    x - 34,
                    peg + 14,
                    x,
                    peg - 4,
                    x + 34,
                    peg + 14,
                    x + 44,
                    peg + 54,
                    x,
                    peg + 76);
            brush.blob(Tone.dim(colour, 0.62), x - 22, peg + 48, x, peg + 22, x + 22, peg + 48, x, peg + 62);
        } else {
            brush.blob(Tone.dim(colour, 0.3), x - 40, peg + 40, x, peg + 24, x + 40, peg + 40, x, peg + 70);
        }
        brush.line(x, peg - 4, x, peg + 16, 15, Tone.of(0x6B4A32));
        brush.disc(x, peg - 6, 11, Tone.of(0x8C6546));
    }

    private static void boots(Brush brush, Light light, double x, double ground, Color sole) {
        for (int i = 0; i < 2; i++) {
            double left = x - 62 + i * 62;
            Color rubber = Tone.mix(light.dark(), sole, 0.35);
            brush.oval(left + 34, ground + 6, 52, 12, Tone.clear(Color.BLACK, 0.4));
            brush.poly(
                    rubber,
                    left,
                    ground - 118,
                    left + 44,
                    ground - 118,
                    left + 46,
                    ground - 36,
                    left + 74,
                    ground - 18,
                    left + 74,
                    ground + 4,
                    left - 2,
                    ground + 4);
            brush.box(left - 3, ground - 126, 50, 18, sole);
            brush.box(left - 4, ground - 4, 80, 10, sole);
            brush.line(left + 12, ground - 100, left + 12, ground - 20, 6, Tone.lift(rubber, 0.4));
        }
    }
}
