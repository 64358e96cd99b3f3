package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** The gable of a net loft, its windows mirrored left and right; one pane of a pair is in the wrong shade. */
final class NetLoft implements Scene {
    @Override
    public void draw(Brush brush, Air air, Light light, SplittableRandom chance) {
        double tall = brush.tall();
        new Shore(brush, air, light, chance).sky(tall * 0.7, 0.5);
        Color tar = Tone.mix(light.accent(), light.dark(), light.lamps() ? 0.62 : 0.38);
        brush.poly(tar, 50, tall * 0.31, 500, tall * 0.075, 950, tall * 0.31, 950, tall, 50, tall);
        for (int i = 0; i < 26; i++) {
            brush.line(60 + i * 35.5, tall * 0.08, 60 + i * 35.5, tall, 4, Tone.dim(tar, 0.35));
        }
        brush.fill(
                Brush.across(0, 50, light.high(), light.sky()),
                Brush.path(0, 0, 500, 0, 500, tall * 0.06, 30, tall * 0.31, 50, tall, 0, tall));
        brush.fill(
                Brush.across(950, 1000, light.sky(), light.high()),
                Brush.path(1000, 0, 500, 0, 500, tall * 0.06, 970, tall * 0.31, 950, tall, 1000, tall));
        air.clouds(0, tall * 0.30, light.cloud(), 0.5, 2.6);
        gable(brush, light, tar, tall);
        air.worn(50, tall * 0.33, 950, tall, 14, 0.25, 0.3);
        for (int row = 0; row < 3; row++) {
            double y = tall * (0.36 + row * 0.19);
            window(brush, light, tall, 150, y, row, false);
            window(brush, light, tall, 850, y, row, true);
        }
        net(brush, light, tall);
        brush.glow(500, tall * 0.2, 480, light.lamps() ? light.lamp() : light.pale(), 0.25);
        air.finish(0.45, 0.12);
    }

    private static void gable(Brush brush, Light light, Color tar, double tall) {
        Color trim = light.lamps() ? Tone.mix(light.pale(), light.sky(), 0.35) : light.pale();
        brush.poly(
                light.dark(),
                10,
                tall * 0.335,
                500,
                tall * 0.035,
                990,
                tall * 0.335,
                990,
                tall * 0.295,
                500,
                0,
                10,
                tall * 0.295);
        brush.line(26, tall * 0.332, 500, tall * 0.052, 18, trim);
        brush.line(974, tall * 0.332, 500, tall * 0.052, 18, trim);
        brush.box(455, tall * 0.15, 90, tall * 0.085, trim);
        brush.box(466, tall * 0.158, 68, tall * 0.07, light.pane(true));
        brush.box(494, tall * 0.158, 11, tall * 0.07, trim);
        brush.box(470, tall * 0.095, 60, 16, light.dark());
        brush.line(500, tall * 0.10, 500, tall * 0.14, 7, light.dark());
    }

    /** Panes counted from the outer edge, so that both sides are alike. */
    private static void window(Brush brush, Light light, double tall, double outer, double y, int row, boolean right) {
        double side = right ? -1 : 1;
        double left = right ? outer - 240 : outer;
        double height = tall * 0.145;
        Color trim = light.lamps() ? Tone.mix(light.pale(), light.sky(), 0.35) : light.pale();
        brush.box(left - 10 + 14, y - 12 + 16, 260, height + 24, Tone.clear(Color.BLACK, 0.4));
        brush.box(left - 12, y - 14, 264, height + 28, trim);
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 2; b++) {
                double x = right ? outer - 76 - a * 82 : outer + a * 82;
                boolean lit = (a + 2 * b + row) % 3 != 0;
                Color pane = light.lamps()
                        ? (lit
                                ? Tone.mix(light.lamp(), light.accent(), 0.1 * row)
                                : Tone.mix(light.near(), light.sky(), 0.5))
                        : Tone.mix(light.high(), light.horizon(), lit ? 0.75 - 0.15 * row : 0.15);
                boolean odd = right && row == 1 && a == 1 && b == 1;
                double py = y + b * height / 2;
                brush.box(x, py, 76, height / 2 - 7, odd ? Tone.mix(light.accent(), light.second(), 0.35) : pane);
                if (!odd) {
                    brush.poly(
                            Tone.clear(Color.WHITE, 0.28),
                            x + 38 - side * 34,
                            py,
                            x + 38 - side * 8,
                            py,
                            x + 38 - side * 34,
                            py + height * 0.26);
                }
            }
        }
        brush.box(left - 22, y + height + 12, 284, 16, Tone.dim(trim, 0.22));
    }

    private static void net(Brush brush, Light light, double tall) {
        Color twine = Tone.mix(Tone.of(0x2F8F83), light.pale(), light.lamps() ? 0.1 : 0.3);
        double top = tall * 0.29;
        brush.line(392, top, 608, top, 16, Tone.dim(light.second(), 0.4));
        brush.fill(
                Tone.clear(light.dark(), 0.45),
                Curves.through(
                        true,
                        400,
                        top,
                        600,
                        top,
                        616,
                        tall * 0.6,
                        640,
                        tall * 0.98,
                        360,
                        tall * 0.98,
                        384,
                        tall * 0.6));
        for (int i = 0; i <= 10; i++) {
            double x = 400 + i * 20;
            double foot = 350 + i * 30;
            brush.curve(4.5, twine, x, top, x + (i % 2 == 0 ? 10 : -10), tall * 0.5, foot, tall * 0.99);
        }
        for (int i = 1; i < 17; i++) {
            double y = top + i * tall * 0.042;
            double spread = 100 + i * 2.6;
            brush.curve(4.5, twine, 500 - spread, y - 8, 470, y + 14, 530, y + 14, 500 + spread, y - 8);
        }
        for (int i = 0; i < 9; i++) {
            double x = 388 + i * 28;
            Color[] corks = {light.accent(), light.second(), light.pale()};
            brush.oval(x, tall * (0.60 + 0.018 * Math.sin(i * 1.3)), 17, 13, corks[i % 3]);
            brush.oval(x - 3, tall * (0.60 + 0.018 * Math.sin(i * 1.3)) - 4, 8, 5, Tone.lift(corks[i % 3], 0.5));
        }
    }
}
