package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** The slip and the tide flats from above at low water: channels winding between banks of sand. */
final class TideFlats implements Scene {
    @Override
    public void draw(Brush brush, Air air, Light light, SplittableRandom chance) {
        double tall = brush.tall();
        Color sand = Tone.mix(Tone.mix(light.second(), light.pale(), 0.5), light.far(), light.lamps() ? 0.6 : 0.15);
        Color wet = Tone.mix(sand, light.middle(), 0.5);
        Color water = Tone.mix(light.middle(), light.high(), 0.5);
        brush.sweep(0, tall, Tone.mix(sand, light.horizon(), 0.5), sand);
        double[] phases = {0.3 + chance.nextDouble(), 2 + chance.nextDouble(), 4 + chance.nextDouble()};
        for (int channel = 0; channel < 3; channel++) {
            for (int band = 7; band >= 0; band--) {
                Color colour = band > 4
                        ? Tone.mix(sand, wet, (8 - band) / 4.0)
                        : Tone.mix(Tone.mix(water, light.sky(), 0.5), Tone.dim(water, 0.25), (4 - band) / 4.0);
                river(brush, colour, tall, channel, band, phases[channel]);
            }
        }
        for (int i = 0; i < 120; i++) {
            double x = chance.nextDouble() * 1000;
            double y = chance.nextDouble() * tall;
            double bend = 8 + 14 * chance.nextDouble();
            brush.curve(
                    3.5,
                    Tone.clear(Tone.lift(light.horizon(), 0.4), 0.45),
                    x,
                    y,
                    x + 22,
                    y + bend,
                    x + 50,
                    y + bend * 0.6,
                    x + 78,
                    y + bend * 1.4);
        }
        air.worn(0, 0, 1000, tall, 30, 2, 0.25);
        slip(brush, light, tall);
        Color[] keels = {light.accent(), light.pale(), light.second(), light.pale()};
        double[][] aground = {{300, 0.34, 0.5}, {590, 0.52, -0.4}, {240, 0.66, 0.9}, {780, 0.25, 0.2}};
        for (int i = 0; i < aground.length; i++) {
            keel(brush, light, aground[i][0], tall * aground[i][1], aground[i][2], keels[i]);
        }
        brush.glow(820, 0, 900, Tone.lift(light.horizon(), 0.3), 0.4);
        air.finish(0.45, 0.13);
    }

    private static void river(Brush brush, Color colour, double tall, int channel, int band, double phase) {
        double[] xy = new double[2 * 16];
        for (int i = 0; i < 16; i++) {
            double t = i / 15.0;
            double base = new double[] {180, 540, 900}[channel] + 180 * (t - 0.5) * (channel - 1);
            xy[2 * i] = base + 110 * Math.sin(5.2 * t + phase) + 36 * Math.sin(12 * t + 2 * phase);
            xy[2 * i + 1] = -60 + t * (tall + 120);
        }
        double width = new double[] {60, 96, 48}[channel];
        brush.curve(width * (0.35 + band * 0.3), colour, xy);
    }

    private static void slip(Brush brush, Light light, double tall) {
        Color stone = Tone.mix(light.near(), light.pale(), 0.25);
        brush.poly(Tone.clear(Color.BLACK, 0.35), 0, tall * 0.80, 600, tall * 0.66, 660, tall * 0.735, 0, tall * 1.0);
        brush.poly(stone, 0, tall * 0.78, 586, tall * 0.65, 640, tall * 0.715, 0, tall * 0.97);
        for (int i = 0; i < 16; i++) {
            double t = i / 16.0;
            brush.line(586 * t, tall * (0.78 - 0.13 * t), 640 * t, tall * (0.97 - 0.255 * t), 5, Tone.dim(stone, 0.35));
        }
        brush.line(0, tall * 0.78, 586, tall * 0.65, 12, Tone.lift(stone, 0.35));
        brush.poly(Tone.mix(light.near(), light.dark(), 0.4), 0, tall * 0.90, 200, tall * 0.89, 330, tall, 0, tall);
        for (int i = 0; i < 5; i++) {
            brush.box(18 + i * 52, tall * 0.925 + (i % 2) * 18, 36, 40, i % 2 == 0 ? light.accent() : light.pale());
        }
    }

    private static void keel(Brush brush, Light light, double x, double y, double turn, Color paint) {
        double c = Math.cos(turn);
        double s = Math.sin(turn);
        double[] out = {-74, 0, -30, -27, 40, -22, 78, 0, 40, 22, -30, 27};
        double[] shade = new double[out.length];
        double[] hull = new double[out.length];
        double[] deck = new double[out.length];
        for (int i = 0; i < out.length; i += 2) {
            hull[i] = x + out[i] * c - out[i + 1] * s;
            hull[i + 1] = y + out[i] * s + out[i + 1] * c;
            shade[i] = hull[i] + 18;
            shade[i + 1] = hull[i + 1] + 22;
            deck[i] = x + (hull[i] - x) * 0.66;
            deck[i + 1] = y + (hull[i + 1] - y) * 0.66;
        }
        brush.blob(Tone.clear(Color.BLACK, 0.4), shade);
        brush.blob(paint, hull);
        brush.blob(Tone.mix(light.near(), paint, 0.35), deck);
        brush.line(x - 40 * c, y - 40 * s, x + 50 * c, y + 50 * s, 8, light.pale());
    }
}
