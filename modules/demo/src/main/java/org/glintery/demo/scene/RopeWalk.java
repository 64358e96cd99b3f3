package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** The rope-walk: a long shed in perspective, ropes running to the open door and the water behind it. */
final class RopeWalk implements Scene {
    private static final double EYE_X = 520;

    @Override
    public void draw(Brush brush, Air air, Light light, SplittableRandom chance) {
        double tall = brush.tall();
        double eye = tall * 0.47;
        Color timber = Tone.mix(light.near(), Tone.of(0x96643C), light.lamps() ? 0.35 : 0.85);
        Color board = Tone.mix(timber, light.pale(), light.lamps() ? 0.15 : 0.4);
        brush.sweep(0, tall, Tone.dim(timber, 0.48), Tone.dim(timber, 0.08));
        brush.poly(board, 0, tall, 1000, tall, EYE_X + 60, eye + 58, EYE_X - 60, eye + 58);
        for (int i = -14; i <= 14; i++) {
            brush.line(EYE_X + i * 86, tall, EYE_X + i * 5.2, eye + 58, 4, Tone.dim(board, 0.45));
        }
        walls(brush, light, timber, eye);
        air.worn(0, 0, 1000, tall, 24, 3, 0.3);
        door(brush, light, eye);
        trusses(brush, timber, eye);
        shafts(brush, light, eye);
        double[] starts = {60, 250, 420, 610, 800, 960};
        for (int i = 0; i < starts.length; i++) {
            Color hemp = Tone.mix(light.second(), light.pale(), 0.15 + 0.1 * (i % 3));
            double endX = EYE_X - 38 + i * 15;
            taper(brush, starts[i], tall * (0.93 + 0.02 * (i % 2)), endX, eye + 26, hemp);
        }
        trestle(brush, timber, tall * 0.80, 0.74);
        trestle(brush, timber, tall * 0.66, 0.38);
        brush.glow(EYE_X, eye, 420, light.lamps() ? light.lamp() : light.horizon(), 0.4);
        if (light.lamps()) {
            new Shore(brush, air, light, chance).lamp(240, tall * 0.26, 17);
            new Shore(brush, air, light, chance).lamp(400, eye - 120, 7);
        }
        air.finish(0.4, 0.12);
    }

    private static void walls(Brush brush, Light light, Color timber, double eye) {
        for (int side = -1; side <= 1; side += 2) {
            for (int i = 0; i < 7; i++) {
                double near = 1 / (0.62 + i * 0.62);
                double far = 1 / (0.62 + (i + 0.55) * 0.62);
                double x1 = EYE_X + side * 372 * near;
                double x2 = EYE_X + side * 372 * far;
                Color glass = light.lamps()
                        ? Tone.mix(light.sky(), light.high(), 0.3)
                        : Tone.mix(light.horizon(), light.pale(), 0.4);
                brush.poly(glass, x1, eye - 172 * near, x2, eye - 172 * far, x2, eye - 20 * far, x1, eye - 20 * near);
                double bar = (x1 + x2) / 2;
                double mid = (near + far) / 2;
                brush.line(bar, eye - 172 * mid, bar, eye - 20 * mid, 9 * mid, timber);
                brush.line(x1, eye - 96 * near, x2, eye - 96 * far, 8 * mid, timber);
            }
        }
    }

    private static void door(Brush brush, Light light, double eye) {
        brush.fill(
                Brush.downwards(eye - 90, eye + 58, light.sky(), light.horizon(), Tone.lift(light.horizon(), 0.4)),
                Brush.path(
                        EYE_X - 60,
                        eye + 58,
                        EYE_X - 60,
                        eye - 60,
                        EYE_X,
                        eye - 104,
                        EYE_X + 60,
                        eye - 60,
                        EYE_X + 60,
                        eye + 58));
        brush.poly(
                light.far(),
                EYE_X - 60,
                eye + 8,
                EYE_X - 10,
                eye - 12,
                EYE_X + 60,
                eye + 4,
                EYE_X + 60,
                eye + 16,
                EYE_X - 60,
                eye + 16);
        brush.poly(
                light.middle(), EYE_X - 60, eye + 16, EYE_X + 60, eye + 16, EYE_X + 60, eye + 58, EYE_X - 60, eye + 58);
        for (int i = 0; i < 5; i++) {
            brush.line(EYE_X - 50 + 12 * i, eye + 22 + 7 * i, EYE_X + 44 - 9 * i, eye + 22 + 7 * i, 3, light.horizon());
        }
    }

    private static void trusses(Brush brush, Color timber, double eye) {
        for (int i = 7; i >= 0; i--) {
            double s = 1 / (0.5 + i * 0.56);
            Color beam = Tone.mix(Tone.dim(timber, 0.72), timber, i / 9.0);
            double half = 310 * s;
            double eaves = eye - 190 * s;
            double ridge = eye - 330 * s;
            brush.line(EYE_X - half, eaves, EYE_X + half, eaves, 20 * s, beam);
            brush.line(EYE_X - half * 1.1, eaves + 20 * s, EYE_X, ridge, 20 * s, beam);
            brush.line(EYE_X + half * 1.1, eaves + 20 * s, EYE_X, ridge, 20 * s, beam);
            brush.line(EYE_X, ridge, EYE_X, eaves, 14 * s, beam);
            brush.line(EYE_X - half, eaves, EYE_X - half, eye + 175 * s, 22 * s, beam);
            brush.line(EYE_X + half, eaves, EYE_X + half, eye + 175 * s, 22 * s, beam);
        }
    }

    private static void shafts(Brush brush, Light light, double eye) {
        Color ray = light.lamps() ? light.sky() : Tone.lift(light.horizon(), 0.3);
        for (int i = 0; i < 4; i++) {
            double near = 1 / (0.62 + i * 0.62);
            double far = 1 / (0.62 + (i + 0.5) * 0.62);
            brush.poly(
                    Tone.clear(ray, 0.20),
                    EYE_X + 372 * near,
                    eye - 150 * near,
                    EYE_X + 372 * far,
                    eye - 150 * far,
                    EYE_X - 120 * far,
                    eye + 175 * far,
                    EYE_X - 160 * near,
                    eye + 190 * near);
        }
    }

    private static void trestle(Brush brush, Color timber, double y, double s) {
        Color wood = Tone.dim(timber, 0.4);
        double left = EYE_X - 560 * s;
        double right = EYE_X + 560 * s;
        brush.line(left, y, right, y, 22 * s, wood);
        brush.line(left, y - 6 * s, right, y - 6 * s, 6 * s, Tone.lift(wood, 0.35));
        for (int i = 0; i < 7; i++) {
            double x = left + (right - left) * i / 6;
            brush.line(x, y, x, y - 46 * s, 13 * s, wood);
        }
    }

    private static void taper(Brush brush, double x1, double y1, double x2, double y2, Color hemp) {
        brush.poly(Tone.clear(Color.BLACK, 0.35), x1 - 4, y1 + 90, x1 + 46, y1 + 90, x2 + 2, y2 + 12, x2 - 1, y2 + 12);
        brush.poly(Tone.dim(hemp, 0.3), x1 - 24, y1 + 90, x1 + 24, y1 + 90, x2 + 2.4, y2, x2 - 2.4, y2);
        brush.poly(hemp, x1 - 18, y1 + 90, x1 + 8, y1 + 90, x2 + 1.2, y2, x2 - 2, y2);
        for (int i = 0; i < 22; i++) {
            double t = 1 - 1 / (1 + i * 0.12);
            double s = 1 - t;
            double x = x1 + (x2 - x1) * t;
            double y = y1 + 90 + (y2 - y1 - 90) * t;
            brush.line(x - 18 * s, y - 14 * s, x + 18 * s, y + 12 * s, 7 * s, Tone.dim(hemp, 0.35));
        }
    }
}
