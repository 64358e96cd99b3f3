package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** A boatyard crane over a hull on the slip, mirrored in the wet stones. */
final class BoatyardCrane implements Scene {
    @Override
    public void draw(Brush brush, Air air, Light light, SplittableRandom chance) {
        double tall = brush.tall();
        double horizon = tall * 0.60;
        var shore = new Shore(brush, air, light, chance);
        shore.sky(horizon, 0.55);
        brush.glow(230, horizon - 60, 520, light.lamps() ? light.accent() : Tone.lift(light.horizon(), 0.5), 0.55);
        shore.hills(horizon, tall * 0.14, 0.15);
        shore.town(horizon + 4, 46);
        air.mist(horizon - 10, tall * 0.10, light.horizon(), 0.6);
        air.water(horizon, tall, light.middle(), light.near(), 22, 0.35);
        shore.glints(horizon, tall * 0.8, Tone.lift(light.horizon(), 0.2), 90);
        Color stone = Tone.mix(light.near(), light.dark(), 0.5);
        brush.poly(stone, 0, tall * 0.80, 1000, tall * 0.735, 1000, tall, 0, tall);
        air.worn(0, tall * 0.74, 1000, tall, 26, 3, 0.4);
        for (int i = 0; i < 6; i++) {
            double y = tall * (0.83 + i * 0.034);
            brush.line(0, y + 20, 1000, y - 34, 4, Tone.clear(light.horizon(), 0.22));
        }
        crane(brush, light, tall);
        hull(brush, light, tall);
        shore.lamp(902, tall * 0.60, 10);
        air.mist(tall * 0.80, tall * 0.05, light.horizon(), 0.25);
        air.finish(0.45, 0.14);
    }

    private static void hull(Brush brush, Light light, double tall) {
        double keel = tall * 0.845;
        double deck = tall * 0.655;
        Color paint = light.accent();
        brush.poly(
                Tone.clear(light.dark(), 0.55),
                110,
                keel + 6,
                640,
                keel - 6,
                560,
                keel + tall * 0.075,
                190,
                keel + tall * 0.075);
        for (double x : new double[] {210, 350, 490}) {
            brush.line(x - 50, keel + 22, x, keel - tall * 0.07, 14, Tone.dim(light.near(), 0.4));
        }
        brush.blob(
                paint, 80, deck - 8, 240, deck + 20, 470, deck + 18, 690, deck - 46, 640, keel - 70, 560, keel - 8, 360,
                keel + 4, 190, keel - 2, 120, keel - 60);
        brush.blob(
                Tone.dim(paint, 0.5),
                112,
                keel - 66,
                360,
                keel - 50,
                646,
                keel - 78,
                570,
                keel - 10,
                360,
                keel + 4,
                188,
                keel - 2);
        brush.curve(9, light.pale(), 108, keel - 70, 240, keel - 56, 380, keel - 52, 530, keel - 62, 652, keel - 84);
        brush.curve(10, light.pale(), 84, deck - 4, 240, deck + 22, 470, deck + 20, 688, deck - 40);
        brush.box(214, deck - 108, 190, 124, light.pale());
        brush.box(214, deck - 108, 46, 124, Tone.mix(light.pale(), light.middle(), 0.4));
        brush.box(200, deck - 122, 218, 18, Tone.mix(light.near(), light.accent(), 0.3));
        for (int i = 0; i < 3; i++) {
            brush.box(276 + i * 42, deck - 84, 28, 36, light.pane(true));
        }
        brush.line(470, deck + 10, 470, deck - 230, 10, light.dark());
        brush.line(470, deck - 220, 640, deck - 40, 3, light.dark());
        brush.line(470, deck - 220, 330, deck - 110, 3, light.dark());
    }

    private static void crane(Brush brush, Light light, double tall) {
        Color iron = Tone.mix(light.dark(), light.second(), 0.12);
        double top = tall * 0.13;
        double foot = tall * 0.80;
        brush.line(716, foot, 764, top, 15, iron);
        brush.line(880, foot - 14, 796, top, 15, iron);
        for (int i = 0; i < 11; i++) {
            double t = i / 11.0;
            double u = (i + 1) / 11.0;
            double l1 = 716 + 48 * t;
            double l2 = 716 + 48 * u;
            double r1 = 880 - 84 * t;
            double r2 = 880 - 84 * u;
            double y1 = foot + (top - foot) * t;
            double y2 = foot + (top - foot) * u;
            brush.line(l1, y1, r2, y2, 6, iron);
            brush.line(r1, y1, l2, y2, 6, iron);
            brush.line(l2, y2, r2, y2, 6, iron);
        }
        jib(brush, iron, 780, top - 6, 250, tall * 0.265);
        jib(brush, iron, 780, top - 6, 960, tall * 0.185);
        brush.box(900, tall * 0.18, 76, tall * 0.062, light.accent());
        brush.box(900, tall * 0.18, 76, 14, Tone.dim(light.accent(), 0.4));
        brush.box(742, top - 14, 84, 70, light.second());
        brush.box(756, top + 2, 40, 34, light.pane(true));
        brush.line(272, tall * 0.268, 272, tall * 0.52, 5, iron);
        brush.box(256, tall * 0.50, 32, 26, light.second());
        brush.curve(8, iron, 272, tall * 0.52 + 4, 284, tall * 0.545, 268, tall * 0.558, 256, tall * 0.546);
    }

    private static void jib(Brush brush, Color iron, double x1, double y1, double x2, double y2) {
        double drop = 46;
        brush.line(x1, y1, x2, y2, 9, iron);
        brush.line(x1, y1 + drop, x2, y2 + 10, 9, iron);
        int bays = (int) (Math.abs(x2 - x1) / 48);
        for (int i = 0; i < bays; i++) {
            double t = (double) i / bays;
            double u = (i + 1.0) / bays;
            brush.line(
                    at(x1, x2, t),
                    at(y1 + drop, y2 + 10, t),
                    at(x1, x2, (t + u) / 2),
                    at(y1, y2, (t + u) / 2),
                    5,
                    iron);
            brush.line(
                    at(x1, x2, (t + u) / 2),
                    at(y1, y2, (t + u) / 2),
                    at(x1, x2, u),
                    at(y1 + drop, y2 + 10, u),
                    5,
                    iron);
        }
    }

    private static double at(double from, double to, double t) {
        return from + (to - from) * t;
    }
}
