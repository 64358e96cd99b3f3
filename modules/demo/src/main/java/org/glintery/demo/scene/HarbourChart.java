package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** A harbour chart of no real place: land, depths by their lines, a channel between marks, a quay and a slip. */
final class HarbourChart implements Scene {
    private static final int STEPS = 40;

    @Override
    public void draw(Brush brush, Air air, Light light, SplittableRandom chance) {
        double tall = brush.tall();
        Color paper = Tone.mix(light.pale(), light.horizon(), 0.35);
        Color ink = light.lamps() ? light.near() : light.dark();
        Color deep = Tone.mix(light.high(), light.middle(), 0.35);
        double[] phases = {chance.nextDouble() * 6, chance.nextDouble() * 6};
        brush.sweep(0, tall, paper, paper);
        for (int depth = 0; depth < 6; depth++) {
            coast(
                    brush,
                    Tone.mix(Tone.mix(paper, light.sky(), 0.35), deep, depth / 5.0),
                    330 + depth * 88,
                    depth,
                    tall,
                    phases);
        }
        island(brush, light, paper, ink, 740, tall * 0.30, 92, phases[0]);
        island(brush, light, paper, ink, 640, tall * 0.76, 58, phases[1]);
        land(brush, light, ink, tall, phases);
        air.worn(0, 0, 1000, tall, 60, 1, 0.2);
        Color grid = Tone.clear(ink, 0.30);
        for (int i = 1; i < 6; i++) {
            brush.line(i * 166.7, 0, i * 166.7, tall, 3, grid);
            brush.line(0, i * tall / 6, 1000, i * tall / 6, 3, grid);
        }
        channel(brush, light, ink, tall);
        soundings(brush, chance, ink, tall);
        frame(brush, light, ink, tall);
        air.finish(0.3, 0.10);
    }

    /** Everything to the right of a wandering line. */
    private static void coast(Brush brush, Color colour, double from, int wobble, double tall, double[] phases) {
        double[] points = new double[2 * (STEPS + 3)];
        for (int i = 0; i <= STEPS; i++) {
            double t = (double) i / STEPS;
            points[2 * i] = from
                    - 130 * Math.sin(t * 3.3 + 0.5)
                    + 60 * Math.sin(t * 8 + phases[0] + wobble * 0.35)
                    + 26 * Math.sin(t * 21 + phases[1] + wobble);
            points[2 * i + 1] = -20 + t * (tall + 40);
        }
        points[2 * STEPS + 2] = 1100;
        points[2 * STEPS + 3] = tall + 40;
        points[2 * STEPS + 4] = 1100;
        points[2 * STEPS + 5] = -40;
        brush.fill(colour, Curves.through(true, points));
    }

    private static void land(Brush brush, Light light, Color ink, double tall, double[] phases) {
        double[] points = new double[2 * (STEPS + 3)];
        for (int i = 0; i <= STEPS; i++) {
            double t = (double) i / STEPS;
            points[2 * i] = 268
                    - 140 * Math.sin(t * 3.3 + 0.5)
                    + 60 * Math.sin(t * 8 + phases[0])
                    + 22 * Math.sin(t * 23 + phases[1]);
            points[2 * i + 1] = -20 + t * (tall + 40);
        }
        points[2 * STEPS + 2] = -60;
        points[2 * STEPS + 3] = tall + 40;
        points[2 * STEPS + 4] = -60;
        points[2 * STEPS + 5] = -40;
        var shape = Curves.through(true, points);
        brush.fill(Tone.mix(light.second(), light.pale(), light.lamps() ? 0.25 : 0.45), shape);
        brush.onlyIn(shape);
        for (int i = 0; i < 5; i++) {
            double r = 330 - i * 62;
            brush.oval(-20, tall * 0.3, r * 0.9, r * 1.5, Tone.clear(light.accent(), 0.13));
            brush.oval(40, tall * 0.86, r * 0.6, r, Tone.clear(light.accent(), 0.13));
        }
        brush.anywhere();
        brush.curve(9, ink, java.util.Arrays.copyOf(points, 2 * STEPS + 2));
        double x = points[2 * 21];
        double y = points[2 * 21 + 1];
        brush.line(x - 20, y - 70, x + 170, y - 34, 22, ink);
        brush.line(x - 10, y + 90, x + 130, y + 110, 22, ink);
        for (int i = 0; i < 14; i++) {
            brush.box(x - 110 + i % 4 * 26, y - 78 + i / 4 * 46, 18, 26, i % 3 == 0 ? light.accent() : ink);
        }
        brush.disc(x + 176, y - 34, 16, light.accent());
    }

    private static void island(
            Brush brush, Light light, Color paper, Color ink, double x, double y, double size, double phase) {
        for (int ring = 3; ring >= 0; ring--) {
            double[] points = new double[36];
            for (int i = 0; i < 18; i++) {
                double angle = i * Math.PI / 9;
                double r = size
                        * (0.6 + ring * 0.28)
                        * (1 + 0.2 * Math.sin(2 * angle + phase) + 0.1 * Math.sin(5 * angle + 2 * phase));
                points[2 * i] = x + r * Math.cos(angle);
                points[2 * i + 1] = y + 1.25 * r * Math.sin(angle);
            }
            Color[] colours = {
                Tone.mix(light.second(), light.pale(), 0.4), paper, Tone.mix(paper, light.sky(), 0.5), light.sky()
            };
            brush.blob(colours[ring], points);
            if (ring == 0) {
                brush.curve(7, ink, java.util.Arrays.copyOf(points, 36));
            }
        }
    }

    private static void channel(Brush brush, Light light, Color ink, double tall) {
        double[] way = {
            960, tall * 0.06, 560, tall * 0.16, 520, tall * 0.40, 860, tall * 0.52, 820, tall * 0.70, 420, tall * 0.62
        };
        for (int i = 0; i < 34; i++) {
            double t = i / 34.0 * (way.length / 2 - 1);
            int k = (int) t;
            double u = t - k;
            u = u * u * (3 - 2 * u);
            double x = way[2 * k] * (1 - u) + way[2 * k + 2] * u;
            double y = way[2 * k + 1] * (1 - u) + way[2 * k + 3] * u;
            if (i % 2 == 0) {
                brush.poly(light.accent(), x - 34, y + 10, x - 24, y - 16, x - 14, y + 10);
                brush.box(x + 18, y - 12, 18, 22, Tone.of(0x2E8A6B));
            } else {
                brush.line(x - 8, y, x + 8, y, 6, ink);
            }
        }
    }

    private static void soundings(Brush brush, SplittableRandom chance, Color ink, double tall) {
        for (int i = 0; i < 70; i++) {
            double x = 420 + chance.nextDouble() * 520;
            double y = 60 + chance.nextDouble() * (tall - 120);
            brush.box(x, y, 7, 14, Tone.clear(ink, 0.6));
            brush.box(x + 11, y, 7, 14, Tone.clear(ink, 0.6));
        }
    }

    private static void frame(Brush brush, Light light, Color ink, double tall) {
        for (double i = 0; i < 1000; i += 50) {
            Color tick = (int) (i / 50) % 2 == 0 ? ink : light.pale();
            brush.box(i, 0, 50, 28, tick);
            brush.box(i, tall - 28, 50, 28, tick);
        }
        for (double i = 0; i < tall; i += 50) {
            Color tick = (int) (i / 50) % 2 == 0 ? ink : light.pale();
            brush.box(0, i, 28, 50, tick);
            brush.box(972, i, 28, 50, tick);
        }
        brush.line(36, 36, 964, 36, 5, ink);
        brush.line(36, tall - 36, 964, tall - 36, 5, ink);
        brush.line(36, 36, 36, tall - 36, 5, ink);
        brush.line(964, 36, 964, tall - 36, 5, ink);
    }
}
