package org.glintery.demo.scene;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/** What lies over the shapes: clouds, mist, what water mirrors, grain. Works pixel by pixel. One thread at a time. */
final class Air {
    private final int[] pixels;
    private final int width;
    private final int height;
    private final double scale;
    private final long seed;
    private int layer;

    Air(BufferedImage image, long seed) {
        this.pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        this.width = image.getWidth();
        this.height = image.getHeight();
        this.scale = width / 1000.0;
        this.seed = seed;
    }

    /** @param cover how much of the sky, 0 to 1 @param stretch how much longer than high the clouds are */
    void clouds(double top, double bottom, Color colour, double cover, double stretch) {
        Noise noise = next();
        for (int y = px(top); y < px(bottom); y++) {
            double down = (double) (y - px(top)) / (px(bottom) - px(top));
            double size = 0.0042 * (1 + 1.2 * down);
            for (int x = 0; x < width; x++) {
                double thick = noise.cloudy(x / scale * size / stretch, y / scale * size, 5);
                double from = 0.74 - 0.36 * cover;
                double opacity = ramp(thick, from, from + 0.2) * (0.9 - 0.5 * down);
                blend(y * width + x, colour, opacity);
            }
        }
    }

    /** A bank of mist around a height. @param spread how far it reaches up and down */
    void mist(double middle, double spread, Color colour, double opacity) {
        Noise noise = next();
        for (int y = px(middle - spread); y < px(middle + spread); y++) {
            double off = (y / scale - middle) / spread;
            double here = opacity * (1 - off * off) * (1 - off * off);
            for (int x = 0; x < width; x++) {
                double wisps = 0.55 + 0.9 * (noise.cloudy(x / scale * 0.0026, y / scale * 0.009, 4) - 0.3);
                blend(y * width + x, colour, here * wisps);
            }
        }
    }

    /**
     * Mirrors what stands above the horizon into the water below it, moved sideways by ripples that grow towards the viewer.
     *
     * @param murk how much of the water's own colour covers the mirror image at the bottom, 0 to 1
     */
    void water(double horizon, double bottom, Color far, Color near, double ripple, double murk) {
        Noise noise = next();
        int edge = px(horizon);
        int last = px(bottom);
        int[] above = java.util.Arrays.copyOf(pixels, edge * width);
        for (int y = edge; y < last; y++) {
            double depth = (double) (y - edge) / Math.max(1, last - edge);
            double band = Math.pow(depth, 0.72);
            Color own = Tone.mix(far, near, depth);
            for (int x = 0; x < width; x++) {
                double wave = noise.cloudy(x / scale * 0.006, 60 * band + x / scale * 0.0007, 2) - 0.5;
                double fine = noise.smooth(x / scale * 0.02, 150 * band, 7) - 0.5;
                int fromX = clamp(x + (int) (ripple * scale * (0.25 + depth) * (wave * 1.6 + fine * 0.5)), width);
                int fromY =
                        clamp(edge - 1 - (int) ((y - edge) * 1.06 + ripple * scale * 0.8 * wave * (0.3 + depth)), edge);
                double cover = 0.16 + murk * depth + 0.22 * (wave + fine * 0.5);
                pixels[y * width + x] = above[fromY * width + fromX];
                blend(y * width + x, own, cover);
            }
        }
    }

    /** Water without a mirror image: bands of swell in two colours. */
    void swell(double top, double bottom, Color first, Color second, double size) {
        Noise noise = next();
        for (int y = px(top); y < px(bottom); y++) {
            double depth = (y / scale - top) / (bottom - top);
            for (int x = 0; x < width; x++) {
                double wave = noise.cloudy(x / scale * 0.004 / size, (y / scale) * 0.03 / size / (0.4 + depth), 4);
                blend(y * width + x, Tone.mix(first, second, ramp(wave, 0.3, 0.7)), 0.85);
            }
        }
    }

    /** Lights and darks in a material: stone, wood, plaster. @param along how much longer across than down */
    void worn(double left, double top, double right, double bottom, double size, double along, double strength) {
        Noise noise = next();
        for (int y = px(top); y < px(bottom); y++) {
            for (int x = clamp((int) (left * scale), width); x < Math.min(width, (int) (right * scale)); x++) {
                double here = noise.cloudy(x / scale / size / along, y / scale / size, 3) - 0.5;
                blend(y * width + x, here < 0 ? Color.BLACK : Color.WHITE, Math.abs(here) * strength);
            }
        }
    }

    /** Darker towards the corners, and grain all over. */
    void finish(double corners, double grain) {
        Noise noise = next();
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double dx = 2.0 * x / width - 1;
                double dy = 2.0 * y / height - 1;
                blend(y * width + x, CORNER, corners * ramp(dx * dx + dy * dy, 0.7, 2.1));
                double speck = noise.at(x, y, 0) - 0.5;
                blend(y * width + x, speck < 0 ? Color.BLACK : Color.WHITE, Math.abs(speck) * grain);
            }
        }
    }

    private static final Color CORNER = new Color(0x0A1024);

    private Noise next() {
        return new Noise(seed + 7919L * layer++);
    }

    private void blend(int index, Color colour, double opacity) {
        if (opacity <= 0) {
            return;
        }
        int share = (int) (256 * Math.min(1, opacity));
        int old = pixels[index];
        int red = old >> 16 & 255;
        int green = old >> 8 & 255;
        int blue = old & 255;
        red += (colour.getRed() - red) * share >> 8;
        green += (colour.getGreen() - green) * share >> 8;
        blue += (colour.getBlue() - blue) * share >> 8;
        pixels[index] = red << 16 | green << 8 | blue;
    }

    private int px(double units) {
        return Math.max(0, Math.min(height, (int) Math.round(units * scale)));
    }

    private static int clamp(int value, int size) {
        return Math.max(0, Math.min(size - 1, value));
    }

    private static double ramp(double value, double from, double to) {
        double t = Math.max(0, Math.min(1, (value - from) / (to - from)));
        return t * t * (3 - 2 * t);
    }
}
