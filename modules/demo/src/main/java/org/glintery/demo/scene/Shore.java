package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** What many of the pictures share: a sky, hills far off, a town along the water. */
final class Shore {
    private final Brush brush;
    private final Air air;
    private final Light light;
    private final SplittableRandom chance;

    Shore(Brush brush, Air air, Light light, SplittableRandom chance) {
        this.brush = brush;
        this.air = air;
        this.light = light;
        this.chance = chance;
    }

    void sky(double horizon, double cover) {
        brush.sweep(0, horizon, light.high(), light.sky(), light.horizon());
        air.clouds(0, horizon, light.cloud(), cover, 2.6);
    }

    /** A ridge of hills, higher in the middle distance. @param nearness 0 far off, 1 close */
    void hills(double horizon, double height, double nearness) {
        int steps = 14;
        double[] points = new double[2 * (steps + 3)];
        double phase = chance.nextDouble() * 6;
        for (int i = 0; i <= steps; i++) {
            double x = -40 + i * 1080.0 / steps;
            double up = 0.55 + 0.3 * Math.sin(x * 0.006 + phase) + 0.2 * Math.sin(x * 0.017 + 2 * phase);
            points[2 * i] = x;
            points[2 * i + 1] = horizon - height * Math.max(0.08, up) - chance.nextDouble() * height * 0.08;
        }
        points[2 * steps + 2] = 1080;
        points[2 * steps + 3] = horizon + 60;
        points[2 * steps + 4] = -80;
        points[2 * steps + 5] = horizon + 60;
        Color top = Tone.mix(Tone.mix(light.horizon(), light.far(), 0.75), light.middle(), nearness);
        brush.fill(
                Brush.downwards(horizon - height, horizon, top, Tone.mix(top, light.horizon(), 0.35)),
                Curves.through(true, points));
    }

    /** Gabled houses in a row. @param size of a house, about */
    void town(double ground, double size) {
        double x = -size * chance.nextDouble();
        while (x < 1000) {
            double width = size * (0.7 + 0.6 * chance.nextDouble());
            house(x, ground, width, size * (0.8 + 0.8 * chance.nextDouble()), size);
            x += width * 0.98;
        }
    }

    private void house(double x, double ground, double width, double height, double size) {
        Color[] walls = {light.middle(), light.far(), light.accent(), light.second(), light.pale()};
        Color wall = Tone.mix(walls[chance.nextInt(walls.length)], light.far(), 0.42);
        wall = light.lamps() ? Tone.mix(wall, light.near(), 0.55) : wall;
        Color roof = Tone.mix(light.near(), light.accent(), 0.25 * chance.nextDouble());
        brush.box(x, ground - height, width, height + 2, wall);
        brush.box(x, ground - height, width * 0.18, height + 2, Tone.dim(wall, 0.18));
        double ridge = ground - height - size * (0.35 + 0.25 * chance.nextDouble());
        brush.poly(roof, x - 3, ground - height, x + width / 2, ridge, x + width + 3, ground - height);
        if (chance.nextInt(3) == 0) {
            brush.box(x + width * 0.68, ridge - size * 0.04, size * 0.12, size * 0.3, roof);
        }
        int columns = Math.max(1, (int) (width / (size * 0.34)));
        double step = width / (columns + 0.5);
        for (double wy = ground - height + size * 0.16; wy < ground - size * 0.2; wy += size * 0.36) {
            for (int c = 0; c < columns; c++) {
                boolean lit = chance.nextInt(5) < 3;
                brush.box(x + step * (c + 0.45), wy, size * 0.14, size * 0.2, light.pane(lit));
            }
        }
    }

    /** Short strokes of light on the water, longer towards the viewer. */
    void glints(double horizon, double bottom, Color colour, int count) {
        for (int i = 0; i < count; i++) {
            double depth = Math.pow(chance.nextDouble(), 1.5);
            double x = chance.nextDouble() * 1040 - 20;
            double y = horizon + 4 + depth * (bottom - horizon);
            double half = 6 + depth * 40 * (0.4 + chance.nextDouble());
            brush.line(x - half, y, x + half, y, 1.5 + depth * 5, Tone.clear(colour, 0.35 + 0.4 * chance.nextDouble()));
        }
    }

    /** A lamp with its light, where lamps are lit. */
    void lamp(double x, double y, double size) {
        if (light.lamps()) {
            brush.glow(x, y, size * 9, light.lamp(), 0.5);
        }
        brush.disc(x, y, size, light.lamps() ? Tone.lift(light.lamp(), 0.3) : light.pale());
    }
}
