package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** Signal flags pinned to a board on the boathouse wall, in an arrangement of our own. */
final class SignalBoard implements Scene {
    @Override
    public void draw(Brush brush, Air air, Light light, SplittableRandom chance) {
        double tall = brush.tall();
        Color wall = Tone.mix(light.pale(), light.sky(), light.lamps() ? 0.8 : 0.35);
        brush.sweep(0, tall, Tone.lift(wall, 0.15), Tone.dim(wall, 0.15));
        for (double y = 0; y < tall; y += 62) {
            brush.box(0, y, 1000, 7, Tone.dim(wall, 0.28));
            brush.box(0, y + 7, 1000, 5, Tone.lift(wall, 0.3));
        }
        air.worn(0, 0, 1000, tall, 30, 4, 0.25);
        double left = 70;
        double top = 84;
        double bottom = tall - 84;
        brush.box(left + 18, top + 22, 860, bottom - top, Tone.clear(light.dark(), 0.45));
        brush.box(left, top, 860, bottom - top, Tone.mix(Tone.of(0x7A4F2E), light.near(), 0.25));
        brush.box(left + 20, top + 20, 820, bottom - top - 40, Tone.mix(light.near(), light.dark(), 0.35));
        air.worn(left, top, left + 860, bottom, 18, 6, 0.5);
        int rows = Math.max(3, (int) Math.round((bottom - top - 60) / 178));
        double stepY = (bottom - top - 60) / rows;
        for (int row = 0; row < rows; row++) {
            double y = top + 30 + row * stepY + 20;
            brush.rope(left + 36, y, left + 824, y, 11, Tone.mix(light.second(), light.pale(), 0.5));
            for (int column = 0; column < 4; column++) {
                flag(brush, light, chance, left + 52 + column * 196, y + 4, 168, stepY - 44);
            }
        }
        for (double[] corner : new double[][] {{left, top}, {left + 860, top}, {left, bottom}, {left + 860, bottom}}) {
            brush.disc(corner[0], corner[1], 22, Tone.dim(light.second(), 0.3));
            brush.disc(corner[0] - 4, corner[1] - 5, 13, Tone.lift(light.second(), 0.35));
        }
        brush.glow(
                light.lamps() ? 500 : 160,
                light.lamps() ? 0 : 60,
                900,
                light.lamps() ? light.lamp() : light.pale(),
                0.34);
        air.finish(0.5, 0.12);
    }

    private static void flag(
            Brush brush, Light light, SplittableRandom chance, double x, double y, double width, double height) {
        Color[] cloth = {
            light.accent(),
            light.second(),
            light.pale(),
            Tone.mix(Tone.of(0x1E4E9C), light.near(), 0.25),
            Tone.mix(Tone.of(0x2E7D6B), light.middle(), 0.2)
        };
        int first = chance.nextInt(cloth.length);
        Color one = cloth[first];
        Color two = cloth[(first + 1 + chance.nextInt(cloth.length - 1)) % cloth.length];
        double sag = 10 + 10 * chance.nextDouble();
        var shape = Curves.through(
                true,
                x,
                y,
                x + width / 2,
                y + sag * 0.4,
                x + width,
                y,
                x + width + 3,
                y + height / 2,
                x + width - 2,
                y + height,
                x + width / 2,
                y + height + sag,
                x + 2,
                y + height,
                x - 3,
                y + height / 2);
        var shadow = java.awt.geom.AffineTransform.getTranslateInstance(12, 14).createTransformedShape(shape);
        brush.fill(Tone.clear(Color.BLACK, 0.35), shadow);
        brush.fill(one, shape);
        brush.onlyIn(shape);
        pattern(brush, chance.nextInt(9), x, y, width, height + sag, two);
        brush.fill(Brush.across(x, x + width * 0.45, Tone.clear(Color.WHITE, 0.22), Tone.clear(Color.WHITE, 0)), shape);
        brush.fill(
                Brush.across(x + width * 0.55, x + width, Tone.clear(Color.BLACK, 0), Tone.clear(Color.BLACK, 0.28)),
                shape);
        brush.anywhere();
        brush.disc(x + 8, y + 2, 7, light.pale());
        brush.disc(x + width - 8, y + 2, 7, light.pale());
    }

    private static void pattern(Brush brush, int which, double x, double y, double w, double h, Color two) {
        switch (which) {
            case 0 -> brush.box(x - 4, y + h / 3, w + 8, h / 3, two);
            case 1 -> brush.box(x + w / 2, y - 4, w, h + 20, two);
            case 2 -> brush.poly(two, x - 4, y - 4, x + w, y + h / 2, x - 4, y + h);
            case 3 -> {
                brush.box(x - 4, y - 4, w / 2 + 4, h / 2 + 4, two);
                brush.box(x + w / 2, y + h / 2, w, h, two);
            }
            case 4 -> brush.box(x + w * 0.28, y + h * 0.28, w * 0.44, h * 0.44, two);
            case 5 ->
                brush.poly(
                        two,
                        x - 4,
                        y - 4,
                        x + w * 0.3,
                        y - 4,
                        x + w + 4,
                        y + h * 0.75,
                        x + w + 4,
                        y + h + 20,
                        x + w * 0.7,
                        y + h + 20,
                        x - 4,
                        y + h * 0.25);
            case 6 -> brush.poly(two, x + w / 2, y + 8, x + w - 12, y + h / 2, x + w / 2, y + h - 8, x + 12, y + h / 2);
            case 7 -> {
                brush.box(x + w * 0.38, y - 4, w * 0.24, h + 20, two);
                brush.box(x - 4, y + h * 0.38, w + 8, h * 0.24, two);
            }
            default -> {
                for (int i = 0; i < 3; i++) {
                    brush.box(x + w * (0.14 + 0.33 * i), y - 4, w * 0.165, h + 20, two);
                }
            }
        }
    }
}
