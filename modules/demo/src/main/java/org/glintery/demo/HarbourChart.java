package org.glintery.demo;

import java.util.SplittableRandom;

/** A harbour chart: depths, a channel, a quay. */
final class HarbourChart extends Scene {
    @Override
    void draw(Light light, SplittableRandom chance) {
        band(0, tall(), mix(light.pale(), light.horizon(), 0.3), light.pale());
        for (int ring = 5; ring >= 0; ring--) {
            double[] points = new double[72];
            for (int i = 0; i < 36; i++) {
                double angle = i * Math.PI / 18;
                double radius = (140 + ring * 75) * (1 + 0.16 * Math.sin(3 * angle + ring) + 0.08 * Math.sin(7 * angle));
                points[2 * i] = 540 + radius * Math.cos(angle);
                points[2 * i + 1] = tall() * 0.52 + radius * 1.15 * Math.sin(angle);
            }
            shape(mix(light.far(), light.sky(), 1 - ring / 6.0), points);
        }
        shape(mix(light.accent(), light.pale(), 0.55), 0, 0, 360, 0, 300, tall() * 0.2, 150, tall() * 0.34, 120, tall() * 0.6, 0, tall() * 0.7);
        shape(mix(light.accent(), light.near(), 0.25), 0, 0, 340, 0, 282, tall() * 0.19, 134, tall() * 0.33, 104, tall() * 0.58, 0, tall() * 0.66);
        for (int i = 0; i < 22; i++) {
            double t = i / 22.0;
            disc(240 + 620 * t + 60 * Math.sin(6 * t), tall() * (0.25 + 0.6 * t), 9, light.accent());
        }
        for (int i = 1; i < 8; i++) {
            line(i * 125, 0, i * 125, tall(), 2, mix(light.middle(), light.pale(), 0.5));
            line(0, i * tall() / 8.0, 1000, i * tall() / 8.0, 2, mix(light.middle(), light.pale(), 0.5));
        }
        for (int i = 0; i < 40; i++) {
            box(250 + chance.nextDouble() * 640, tall() * (0.1 + 0.8 * chance.nextDouble()), 16, 10, light.near());
        }
        line(282, tall() * 0.19, 420, tall() * 0.25, 20, light.near());
        box(0, 0, 1000, 26, light.near());
        box(0, tall() - 26, 1000, 26, light.near());
        box(0, 0, 26, tall(), light.near());
        box(974, 0, 26, tall(), light.near());
    }
}
