package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** Lock gates between walls of dressed stone, water falling through the leak where they meet. */
final class LockGates implements Scene {
    @Override
    public void draw(Brush brush, Air air, Light light, SplittableRandom chance) {
        double tall = brush.tall();
        double sill = tall * 0.30;
        double pool = tall * 0.78;
        var shore = new Shore(brush, air, light, chance);
        shore.sky(sill, 0.5);
        brush.glow(500, sill, 500, Tone.lift(light.horizon(), 0.4), 0.6);
        shore.hills(sill, tall * 0.12, 0.3);
        shore.town(sill, 40);
        Color stone = Tone.mix(light.far(), light.near(), light.lamps() ? 0.75 : 0.45);
        brush.poly(stone, 0, sill - 40, 200, sill, 250, pool, 0, tall);
        brush.poly(stone, 1000, sill - 40, 800, sill, 750, pool, 1000, tall);
        courses(brush, stone, sill, pool, tall, -1);
        courses(brush, stone, sill, pool, tall, 1);
        air.worn(0, sill - 40, 250, tall, 16, 2, 0.45);
        air.worn(750, sill - 40, 1000, tall, 16, 2, 0.45);
        gate(brush, light, sill, pool, -1);
        gate(brush, light, sill, pool, 1);
        air.worn(250, sill, 750, pool, 12, 0.3, 0.35);
        for (int i = 0; i < 26; i++) {
            double x = 500 + (chance.nextDouble() - 0.5) * 60;
            double top = sill + (pool - sill) * (0.25 + 0.3 * chance.nextDouble());
            brush.curve(
                    7,
                    Tone.clear(Tone.lift(light.pale(), 0.3), 0.7),
                    x,
                    top,
                    x + (x - 500) * 0.8,
                    (top + pool) / 2,
                    x + (x - 500) * 2,
                    pool);
        }
        air.water(pool, tall, light.middle(), light.dark(), 46, 0.35);
        for (int i = 0; i < 60; i++) {
            double reach = chance.nextDouble();
            brush.oval(
                    500 + (chance.nextDouble() - 0.5) * 340 * (0.4 + reach),
                    pool + 6 + reach * 70,
                    18 * (1.2 - reach),
                    8 * (1.2 - reach),
                    Tone.clear(light.pale(), 0.7 * (1.1 - reach)));
        }
        beams(brush, light, sill);
        shore.lamp(96, sill - 150, 12);
        brush.line(96, sill - 138, 96, sill - 20, 10, light.dark());
        air.finish(0.5, 0.13);
    }

    private static void courses(Brush brush, Color stone, double sill, double pool, double tall, int side) {
        for (int i = 0; i < 13; i++) {
            double t = i / 12.0;
            double outer = sill - 40 + t * (tall - sill + 40);
            double inner = sill + t * (pool - sill);
            double edge = side < 0 ? 200 + 50 * t : 800 - 50 * t;
            double wall = side < 0 ? 0 : 1000;
            brush.line(wall, outer, edge, inner, 6, Tone.dim(stone, 0.45));
            for (int k = 0; k < 3; k++) {
                double u = (k + (i % 2) * 0.5 + 0.25) / 3;
                double x = wall + (edge - wall) * u;
                double y = outer + (inner - outer) * u;
                brush.line(x, y, x, y + (tall - sill) / 14 * (1 - u * 0.4), 5, Tone.dim(stone, 0.45));
            }
        }
        double x = side < 0 ? 208 : 792;
        brush.line(x, sill, side < 0 ? 252 : 748, pool, 14, Tone.lift(stone, 0.35));
    }

    private static void gate(Brush brush, Light light, double sill, double pool, int side) {
        Color wood = Tone.mix(Tone.of(0x3E5A4A), light.near(), light.lamps() ? 0.6 : 0.25);
        double hinge = 500 + side * 262;
        double meet = 500;
        double lift = 26;
        brush.poly(wood, hinge, sill, meet, sill + lift, meet, pool, hinge + side * -12, pool);
        for (int i = 0; i < 9; i++) {
            double x = hinge + (meet - hinge) * i / 9;
            brush.line(x, sill + lift * i / 9, x, pool, 5, Tone.dim(wood, 0.45));
        }
        for (double t : new double[] {0.04, 0.36, 0.68, 0.97}) {
            double y1 = sill + t * (pool - sill);
            double y2 = sill + lift + t * (pool - sill - lift);
            brush.line(hinge, y1, meet, y2, 30, Tone.dim(wood, 0.25));
            brush.line(hinge, y1 - 9, meet, y2 - 9, 7, Tone.lift(wood, 0.3));
        }
        brush.line(meet + side * 9, sill + lift, meet + side * 9, pool, 17, Tone.dim(wood, 0.4));
        brush.box(500 + side * 130 - 36, pool - (pool - sill) * 0.28, 72, 70, light.dark());
        brush.line(500 + side * 130, sill + 10, 500 + side * 130, pool - (pool - sill) * 0.28, 9, light.accent());
    }

    private static void beams(Brush brush, Light light, double sill) {
        Color white = light.lamps() ? Tone.mix(light.pale(), light.sky(), 0.4) : light.pale();
        brush.line(480, sill + 20, 20, sill - 66, 40, Tone.dim(white, 0.5));
        brush.line(480, sill + 10, 20, sill - 76, 34, light.dark());
        brush.line(520, sill + 10, 980, sill - 76, 34, light.dark());
        brush.line(110, sill - 58, 20, sill - 76, 34, white);
        brush.line(890, sill - 58, 980, sill - 76, 34, white);
        brush.line(330, sill - 20, 330, sill - 86, 8, light.dark());
        brush.line(670, sill - 20, 670, sill - 86, 8, light.dark());
        brush.line(330, sill - 86, 670, sill - 86, 7, light.dark());
    }
}
