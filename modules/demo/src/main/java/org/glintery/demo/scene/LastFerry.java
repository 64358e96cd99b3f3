package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** A ferry at the slip, and the departures board whose figures are only a few cells high. */
final class LastFerry implements Scene {
    @Override
    public void draw(Brush brush, Air air, Light light, SplittableRandom chance) {
        double tall = brush.tall();
        double horizon = tall * 0.57;
        var shore = new Shore(brush, air, light, chance);
        shore.sky(horizon, 0.6);
        brush.glow(330, horizon, 560, light.lamps() ? light.accent() : Tone.lift(light.horizon(), 0.4), 0.45);
        shore.hills(horizon, tall * 0.16, 0.1);
        shore.hills(horizon, tall * 0.08, 0.5);
        shore.town(horizon, 30);
        ferry(brush, shore, light, horizon + 8, tall);
        air.water(horizon, tall * 0.86, light.middle(), light.near(), 30, 0.28);
        ferryFoot(brush, light, horizon);
        shore.glints(horizon + 26, tall * 0.84, light.lamps() ? light.lamp() : Tone.lift(light.horizon(), 0.4), 80);
        quay(brush, air, light, tall);
        board(brush, light, chance, tall);
        air.finish(0.5, 0.14);
    }

    private static void ferry(Brush brush, Shore shore, Light light, double water, double tall) {
        Color white = light.lamps() ? Tone.mix(light.pale(), light.middle(), 0.35) : light.pale();
        Color shade = Tone.mix(white, light.middle(), 0.45);
        double deck = water - tall * 0.085;
        brush.blob(
                light.lamps() ? Tone.mix(light.accent(), light.dark(), 0.45) : light.accent(),
                20,
                deck + 6,
                300,
                deck + 24,
                600,
                deck + 4,
                664,
                deck - 14,
                626,
                water + 14,
                90,
                water + 14);
        brush.box(60, deck - 96, 530, 108, white);
        brush.box(60, deck - 96, 530, 18, shade);
        brush.box(120, deck - 176, 380, 84, white);
        brush.box(120, deck - 176, 380, 16, shade);
        brush.poly(white, 380, deck - 176, 500, deck - 176, 488, deck - 244, 396, deck - 244);
        brush.box(398, deck - 226, 88, 26, light.pane(true));
        for (int i = 0; i < 11; i++) {
            brush.box(84 + i * 45, deck - 62, 30, 36, light.pane(true));
        }
        for (int i = 0; i < 8; i++) {
            brush.box(140 + i * 44, deck - 146, 28, 32, light.pane(i != 3));
        }
        brush.poly(light.accent(), 214, deck - 176, 306, deck - 176, 296, deck - 300, 226, deck - 300);
        brush.poly(light.dark(), 222, deck - 268, 299, deck - 268, 296, deck - 300, 226, deck - 300);
        brush.poly(light.second(), 220, deck - 240, 301, deck - 240, 300, deck - 262, 222, deck - 262);
        brush.line(444, deck - 244, 444, deck - 350, 7, light.dark());
        shore.lamp(444, deck - 350, 8);
        for (int i = 0; i < 7; i++) {
            brush.glow(258 - i * 30, deck - 320 - i * 20, 40 + i * 14, light.cloud(), 0.35 - i * 0.035);
        }
    }

    private static void ferryFoot(Brush brush, Light light, double horizon) {
        brush.poly(
                Tone.clear(light.dark(), 0.75),
                84,
                horizon + 8,
                640,
                horizon + 8,
                600,
                horizon + 30,
                120,
                horizon + 30);
        brush.line(60, horizon + 12, 650, horizon + 12, 6, light.pale());
    }

    private static void quay(Brush brush, Air air, Light light, double tall) {
        Color stone = Tone.mix(light.near(), light.dark(), 0.45);
        brush.poly(stone, 0, tall * 0.875, 1000, tall * 0.835, 1000, tall, 0, tall);
        air.worn(0, tall * 0.84, 1000, tall, 24, 3, 0.45);
        brush.line(0, tall * 0.875, 1000, tall * 0.835, 10, Tone.mix(stone, light.horizon(), 0.5));
        for (int i = 0; i < 4; i++) {
            double x = 70 + i * 160;
            double y = tall * (0.871 - 0.0064 * i);
            brush.box(x, y - 46, 40, 50, light.dark());
            brush.oval(x + 20, y - 48, 28, 12, Tone.mix(light.dark(), light.second(), 0.25));
        }
    }

    private static void board(Brush brush, Light light, SplittableRandom chance, double tall) {
        double x = 664;
        double y = tall * 0.235;
        double w = 296;
        double h = tall * 0.40;
        brush.line(x + 46, y + h, x + 46, tall * 0.94, 20, light.dark());
        brush.line(x + w - 46, y + h, x + w - 46, tall * 0.93, 20, light.dark());
        brush.glow(x + w / 2, y + h / 2, 430, light.second(), light.lamps() ? 0.42 : 0.12);
        brush.poly(light.accent(), x - 26, y, x + w / 2, y - 66, x + w + 26, y);
        brush.poly(Tone.dim(light.accent(), 0.35), x + w / 2, y - 66, x + w + 26, y, x + w / 2, y);
        brush.box(x - 12, y - 4, w + 24, h + 18, Tone.mix(light.dark(), light.second(), 0.15));
        brush.box(x, y + 8, w, h - 8, Tone.of(0x0B0F18));
        brush.box(x + 14, y + 24, w - 28, 30, light.lamps() ? light.lamp() : light.pale());
        int rows = (int) ((h - 80) / 44);
        for (int row = 0; row < rows; row++) {
            double top = y + 76 + row * 44;
            Color lit = row == 2 ? light.accent() : light.second();
            for (int c = 0; c < 4; c++) {
                figure(brush, chance, x + 18 + c * 20 + (c > 1 ? 10 : 0), top, lit);
            }
            int letters = 4 + chance.nextInt(4);
            for (int c = 0; c < letters; c++) {
                figure(brush, chance, x + 122 + c * 20, top, light.pale());
            }
        }
    }

    /** A figure two cells wide and four high: a mark, not to be read. */
    private static void figure(Brush brush, SplittableRandom chance, double x, double y, Color colour) {
        int strokes = 1 + chance.nextInt(14);
        if ((strokes & 1) != 0) {
            brush.box(x, y, 13, 6, colour);
        }
        if ((strokes & 2) != 0) {
            brush.box(x, y, 6, 26, colour);
        }
        if ((strokes & 4) != 0) {
            brush.box(x + 8, y, 6, 26, colour);
        }
        if ((strokes & 8) != 0) {
            brush.box(x, y + 20, 13, 6, colour);
        }
    }
}
