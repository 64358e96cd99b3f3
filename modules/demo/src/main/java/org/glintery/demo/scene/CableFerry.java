package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** A small cable ferry on a river between layered hills. */
final class CableFerry implements Scene {
    @Override
    public void draw(Brush brush, Air air, Light light, SplittableRandom chance) {
        double tall = brush.tall();
        double horizon = tall * 0.56;
        var shore = new Shore(brush, air, light, chance);
        shore.sky(horizon, 0.45);
        brush.glow(420, horizon * 0.72, 640, Tone.lift(light.horizon(), 0.45), 0.6);
        for (int i = 0; i < 5; i++) {
            shore.hills(horizon, tall * (0.36 - i * 0.062), i * 0.22);
            air.mist(horizon - tall * (0.16 - i * 0.035), tall * 0.055, light.horizon(), 0.55);
        }
        trees(brush, light, chance, horizon);
        air.water(horizon, tall, light.middle(), light.near(), 20, 0.3);
        shore.glints(horizon + 10, tall, Tone.lift(light.horizon(), 0.3), 80);
        double y = tall * 0.715;
        brush.curve(5, light.dark(), -20, y - 70, 250, y - 44, 520, y - 36, 780, y - 52, 1020, y - 90);
        ferry(brush, shore, light, 500, y);
        bank(brush, air, light, chance, tall);
        air.mist(tall * 0.66, tall * 0.05, light.horizon(), 0.4);
        air.finish(0.45, 0.13);
    }

    private static void trees(Brush brush, Light light, SplittableRandom chance, double ground) {
        for (int i = 0; i < 64; i++) {
            double x = chance.nextDouble() * 1000;
            double edge = Math.abs(x - 500) / 500;
            double h = 30 + 120 * edge * (0.5 + chance.nextDouble());
            Color green =
                    Tone.mix(Tone.mix(light.near(), Tone.of(0x2F5B45), 0.4), light.far(), 0.45 * chance.nextDouble());
            brush.poly(green, x - h * 0.24, ground + 2, x, ground - h, x + h * 0.24, ground + 2);
        }
    }

    private static void ferry(Brush brush, Shore shore, Light light, double x, double y) {
        Color deck = light.accent();
        brush.poly(
                Tone.clear(Tone.dim(deck, 0.5), 0.6),
                x - 190,
                y + 42,
                x + 190,
                y + 42,
                x + 150,
                y + 84,
                x - 150,
                y + 84);
        brush.poly(
                deck, x - 230, y - 22, x - 180, y + 6, x + 180, y + 6, x + 230, y - 22, x + 190, y + 42, x - 190,
                y + 42);
        brush.poly(Tone.dim(deck, 0.4), x - 200, y + 22, x + 200, y + 22, x + 190, y + 42, x - 190, y + 42);
        brush.line(x - 222, y - 14, x - 180, y + 8, 8, light.pale());
        brush.line(x + 222, y - 14, x + 180, y + 8, 8, light.pale());
        brush.line(x - 180, y + 8, x + 180, y + 8, 8, light.pale());
        for (int i = 0; i < 8; i++) {
            brush.line(x - 168 + i * 48, y + 4, x - 168 + i * 48, y - 44, 7, light.pale());
        }
        brush.line(x - 170, y - 44, x + 170, y - 44, 7, light.pale());
        brush.box(x - 46, y - 136, 92, 140, light.pale());
        brush.box(x - 46, y - 136, 26, 140, Tone.mix(light.pale(), light.middle(), 0.4));
        brush.box(x - 60, y - 152, 120, 20, light.near());
        brush.box(x - 14, y - 112, 46, 42, light.pane(true));
        brush.line(x + 28, y - 150, x + 28, y - 212, 6, light.dark());
        brush.poly(light.second(), x + 28, y - 212, x + 92, y - 198, x + 28, y - 178);
        shore.lamp(x - 30, y - 160, 9);
    }

    private static void bank(Brush brush, Air air, Light light, SplittableRandom chance, double tall) {
        Color earth = Tone.mix(light.dark(), Tone.of(0x2D4A38), 0.3);
        brush.blob(
                earth,
                -60,
                tall * 0.86,
                180,
                tall * 0.90,
                460,
                tall * 0.965,
                800,
                tall * 1.04,
                200,
                tall * 1.1,
                -80,
                tall * 1.06);
        brush.blob(earth, 1060, tall * 0.90, 880, tall * 0.955, 760, tall * 1.03, 1060, tall * 1.08);
        for (int i = 0; i < 90; i++) {
            double x = i < 60 ? chance.nextDouble() * 420 : 800 + chance.nextDouble() * 200;
            double y = i < 60 ? tall * (0.90 + 0.09 * x / 420) : tall * (1.08 - 0.15 * (x - 700) / 300);
            double lean = -26 + chance.nextDouble() * 52;
            double h = 60 + chance.nextDouble() * 100;
            brush.line(x, y + 20, x + lean, y - h, 5, Tone.mix(earth, light.second(), 0.35 * chance.nextDouble()));
        }
        brush.box(70, tall * 0.745, 26, tall * 0.16, light.dark());
        brush.box(60, tall * 0.74, 46, 18, light.second());
    }
}
