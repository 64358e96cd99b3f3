package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** Tall houses along a quay, their windows mirrored in still water. */
final class QuayHouses implements Scene {
    @Override
    public void draw(Brush brush, Air air, Light light, SplittableRandom chance) {
        double tall = brush.tall();
        double horizon = tall * 0.60;
        var shore = new Shore(brush, air, light, chance);
        shore.sky(horizon, 0.5);
        brush.glow(500, horizon * 0.9, 700, light.horizon(), 0.5);
        shore.hills(horizon, tall * 0.30, 0.25);
        double[] widths = {150, 190, 160, 210, 150, 200};
        Color[] fronts = {
            light.accent(),
            light.second(),
            Tone.mix(light.middle(), light.pale(), 0.3),
            light.pale(),
            Tone.mix(Tone.of(0x3E7F6A), light.middle(), 0.3),
            Tone.mix(light.accent(), light.second(), 0.5)
        };
        double x = -30;
        for (int i = 0; i < widths.length; i++) {
            front(brush, light, chance, x, horizon, widths[i], tall * (0.27 + 0.07 * ((i * 2 + 1) % 3)), fronts[i], i);
            x += widths[i];
        }
        brush.box(0, horizon - 8, 1000, 14, Tone.mix(light.near(), light.horizon(), 0.2));
        air.water(horizon + 2, tall, light.near(), light.dark(), 26, 0.30);
        brush.box(0, horizon, 1000, 26, Tone.mix(light.dark(), light.near(), 0.5));
        for (int i = 0; i < 9; i++) {
            brush.box(40 + i * 118, horizon + 4, 16, 44, light.dark());
        }
        shore.lamp(146, horizon - 96, 11);
        brush.line(146, horizon - 88, 146, horizon, 8, light.dark());
        shore.lamp(706, horizon - 96, 11);
        brush.line(706, horizon - 88, 706, horizon, 8, light.dark());
        shore.glints(horizon + 40, tall, light.lamps() ? light.lamp() : Tone.lift(light.sky(), 0.4), 70);
        Breakwater.boat(brush, light, 330, tall * 0.79, 1.15, light.pale(), false);
        Breakwater.boat(brush, light, 790, tall * 0.735, 0.85, light.accent(), true);
        air.finish(0.5, 0.12);
    }

    private static void front(
            Brush brush,
            Light light,
            SplittableRandom chance,
            double x,
            double ground,
            double w,
            double h,
            Color colour,
            int i) {
        Color wall = light.lamps() ? Tone.mix(colour, light.near(), 0.52) : Tone.mix(colour, light.far(), 0.12);
        Color trim = light.lamps() ? Tone.mix(light.pale(), light.sky(), 0.5) : light.pale();
        Color roof = Tone.mix(light.dark(), light.accent(), 0.22);
        double top = ground - h;
        if (i % 3 == 1) {
            brush.poly(
                    wall,
                    x,
                    top + 2,
                    x,
                    top - 46,
                    x + w * 0.22,
                    top - 46,
                    x + w * 0.22,
                    top - 92,
                    x + w * 0.78,
                    top - 92,
                    x + w * 0.78,
                    top - 46,
                    x + w,
                    top - 46,
                    x + w,
                    top + 2);
        } else {
            brush.poly(roof, x - 6, top + 2, x + w / 2, top - w * 0.62, x + w + 6, top + 2);
            brush.box(x + w * 0.7, top - w * 0.55, 26, 70, roof);
        }
        brush.box(x, top, w, h, wall);
        brush.fill(
                Brush.across(x, x + w, Tone.clear(Color.BLACK, 0.26), Tone.clear(Color.BLACK, 0)),
                new java.awt.geom.Rectangle2D.Double(x, top, w, h));
        brush.box(x, top, w, 10, trim);
        int floors = (int) (h / 96);
        int columns = w > 180 ? 3 : 2;
        double step = w / columns;
        for (int f = 0; f < floors; f++) {
            for (int c = 0; c < columns; c++) {
                double wx = x + step * (c + 0.5) - 22;
                double wy = top + 30 + f * 92;
                boolean lit = chance.nextInt(10) < 6;
                if (lit && light.lamps()) {
                    brush.glow(wx + 22, wy + 30, 64, light.lamp(), 0.35);
                }
                brush.box(wx - 6, wy - 6, 56, 72, trim);
                brush.box(wx, wy, 44, 60, light.pane(lit));
                brush.box(wx + 19, wy, 6, 60, trim);
                brush.box(wx, wy + 22, 44, 6, trim);
            }
        }
        brush.box(x + w / 2 - 17, top - 66, 34, 40, trim);
        brush.box(x + w / 2 - 11, top - 60, 22, 28, light.pane(i % 2 == 0));
    }
}
