package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** A long pier with lamps, running out into the weather. */
final class LongPier implements Scene {
    @Override
    public void draw(Brush brush, Air air, Light light, SplittableRandom chance) {
        double tall = brush.tall();
        double horizon = tall * 0.46;
        double endX = 640;
        var shore = new Shore(brush, air, light, chance);
        shore.sky(horizon, 0.8);
        brush.glow(endX, horizon - 30, 560, Tone.lift(light.horizon(), 0.5), 0.7);
        shore.hills(horizon, tall * 0.06, 0.05);
        pavilion(brush, light, endX, horizon);
        air.water(horizon, tall, light.sky(), light.near(), 30, 0.55);
        shore.glints(horizon, tall, Tone.lift(light.horizon(), 0.4), 130);
        Color wood = Tone.mix(light.dark(), Tone.of(0x4A3828), 0.35);
        for (int i = 12; i >= 0; i--) {
            double s = 1 / (0.42 + i * 0.46);
            double left = endX - 150 * s;
            double right = endX + 40 * s;
            double deck = horizon + 92 * s;
            Color haze = Tone.mix(wood, light.horizon(), Math.min(0.8, i * 0.07));
            for (double x : new double[] {left + 12 * s, right - 12 * s}) {
                brush.line(x, deck, x, deck + 150 * s, 17 * s, haze);
                brush.line(x, deck + 150 * s, x + 6 * s, deck + 300 * s, 14 * s, Tone.clear(haze, 0.35));
            }
            brush.line(left + 12 * s, deck + 20 * s, right - 12 * s, deck + 130 * s, 8 * s, haze);
            brush.line(right - 12 * s, deck + 20 * s, left + 12 * s, deck + 130 * s, 8 * s, haze);
        }
        Color plank = Tone.mix(light.pale(), wood, 0.35);
        double front = (tall + 40 - horizon) / 92;
        brush.poly(
                plank,
                endX - 15,
                horizon + 9,
                endX + 4,
                horizon + 9,
                endX + 40 * front,
                tall + 40,
                endX - 150 * front,
                tall + 40);
        for (int i = 0; i < 84; i++) {
            double s = 1 / (0.13 + i * 0.045);
            double y = horizon + 92 * s;
            brush.line(endX - 150 * s, y, endX + 40 * s, y, Math.max(1.5, Math.min(9, 3 * s)), Tone.clear(wood, 0.55));
        }
        air.worn(0, horizon + 20, 1000, tall, 20, 6, 0.2);
        for (int i = 8; i >= 0; i--) {
            double s = 1 / (0.56 + i * 0.56);
            Color iron = Tone.mix(light.dark(), light.horizon(), Math.min(0.75, i * 0.09));
            post(brush, shore, endX - 146 * s, horizon + 92 * s, s, iron, -1);
            post(brush, shore, endX + 38 * s, horizon + 92 * s, s, iron, 1);
        }
        for (int side = 0; side < 2; side++) {
            double k = side == 0 ? -146 : 38;
            for (double up : new double[] {20, 52}) {
                brush.line(
                        endX + k * 0.18,
                        horizon + (92 - up) * 0.18,
                        endX + k * 8,
                        horizon + (92 - up) * 8,
                        4,
                        Tone.mix(light.dark(), light.horizon(), 0.25));
            }
        }
        air.mist(horizon + 10, tall * 0.07, light.horizon(), 0.75);
        if (light == Light.FROST) {
            for (int i = 0; i < 190; i++) {
                brush.disc(
                        chance.nextDouble() * 1000,
                        chance.nextDouble() * tall,
                        3 + 5 * chance.nextDouble(),
                        Tone.clear(Color.WHITE, 0.85));
            }
        }
        air.finish(0.35, 0.14);
    }

    private static void post(Brush brush, Shore shore, double x, double deck, double s, Color iron, int side) {
        brush.line(x, deck, x, deck - 210 * s, 12 * s, iron);
        brush.curve(
                8 * s, iron, x, deck - 196 * s, x + side * 4 * s, deck - 226 * s, x - side * 36 * s, deck - 226 * s);
        shore.lamp(x - side * 40 * s, deck - 214 * s, 14 * s);
    }

    private static void pavilion(Brush brush, Light light, double x, double horizon) {
        Color wall = Tone.mix(light.far(), light.middle(), 0.5);
        brush.box(x - 74, horizon - 34, 132, 38, wall);
        brush.poly(
                Tone.mix(light.middle(), light.accent(), 0.4),
                x - 90,
                horizon - 32,
                x - 8,
                horizon - 84,
                x + 74,
                horizon - 32);
        brush.box(x - 14, horizon - 104, 12, 30, wall);
        for (int i = 0; i < 4; i++) {
            brush.box(x - 62 + i * 30, horizon - 24, 18, 20, light.pane(true));
        }
    }
}
