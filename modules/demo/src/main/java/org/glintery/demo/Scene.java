package org.glintery.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.Polygon;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.SplittableRandom;

/** A picture drawn by code, in units of a thousandth of its width; y runs to 1000 times height over width. */
abstract class Scene {
    static final int WIDTH = 600;

    private Graphics2D g;
    private double scale;
    private int tall;

    final BufferedImage paint(double heightToWidth, Light light, SplittableRandom chance) {
        int height = (int) Math.round(WIDTH * heightToWidth);
        var image = new BufferedImage(WIDTH, height, BufferedImage.TYPE_INT_RGB);
        g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        scale = WIDTH / 1000.0;
        tall = (int) Math.round(1000 * heightToWidth);
        draw(light, chance);
        g.dispose();
        return image;
    }

    abstract void draw(Light light, SplittableRandom chance);

    /** The height in the scene's units. */
    final int tall() {
        return tall;
    }

    final void band(double top, double bottom, Color above, Color below) {
        g.setPaint(new GradientPaint(0, (float) (top * scale), above, 0, (float) (bottom * scale), below));
        g.fillRect(0, (int) (top * scale), WIDTH, (int) Math.ceil((bottom - top) * scale) + 1);
    }

    final void box(double x, double y, double width, double height, Color colour) {
        g.setColor(colour);
        g.fillRect(px(x), px(y), Math.max(1, px(width)), Math.max(1, px(height)));
    }

    final void disc(double x, double y, double radius, Color colour) {
        g.setColor(colour);
        g.fillOval(px(x - radius), px(y - radius), px(2 * radius), px(2 * radius));
    }

    final void line(double x1, double y1, double x2, double y2, double width, Color colour) {
        g.setColor(colour);
        g.setStroke(new BasicStroke((float) (width * scale), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.drawLine(px(x1), px(y1), px(x2), px(y2));
    }

    /** Pairs of x and y. */
    final void shape(Color colour, double... points) {
        var polygon = new Polygon();
        for (int i = 0; i < points.length; i += 2) {
            polygon.addPoint(px(points[i]), px(points[i + 1]));
        }
        g.setColor(colour);
        g.fillPolygon(polygon);
    }

    /** Sky down to the horizon and water below it, with streaks of light. */
    final void skyAndWater(Light light, double horizon, SplittableRandom chance) {
        band(0, horizon, light.sky(), light.horizon());
        clouds(light, horizon, chance);
        band(horizon, tall, mix(light.horizon(), light.middle(), 0.35), light.near());
        for (int i = 0; i < 150; i++) {
            double depth = Math.pow(chance.nextDouble(), 1.6);
            double y = horizon + 4 + depth * (tall - horizon);
            double length = 18 + depth * 120;
            Color streak = chance.nextInt(3) == 0 ? light.horizon() : light.far();
            double x = chance.nextDouble() * 1000 - 60;
            line(x, y, x + length, y, 2 + depth * 5, streak);
        }
    }

    private void clouds(Light light, double horizon, SplittableRandom chance) {
        for (int i = 0; i < 6; i++) {
            double y = horizon * (0.15 + 0.7 * chance.nextDouble());
            double x = chance.nextDouble() * 1000;
            double length = 120 + chance.nextDouble() * 320;
            Color cloud = mix(light.horizon(), light.pale(), 0.5);
            for (int j = 0; j < 4; j++) {
                line(x + j * 22, y + j * 9, x + length - j * 30, y + j * 9, 13 - 2 * j, mix(cloud, light.sky(), 0.2 + j * 0.15));
            }
        }
    }

    /** A row of gabled houses along a shore. */
    final void houses(Light light, double ground, double size, SplittableRandom chance) {
        double x = -30;
        while (x < 1030) {
            double width = size * (0.7 + chance.nextDouble() * 0.8);
            double height = size * (0.7 + chance.nextDouble() * 0.9);
            Color wall = mix(light.far(), chance.nextInt(4) == 0 ? light.accent() : light.middle(), 0.2 + 0.5 * chance.nextDouble());
            box(x, ground - height, width, height, wall);
            shape(mix(wall, light.near(), 0.55), x - 5, ground - height, x + width / 2, ground - height - size * 0.5, x + width + 5, ground - height);
            for (double wx = x + width * 0.2; wx < x + width * 0.8; wx += width * 0.32) {
                box(wx, ground - height * 0.68, width * 0.14, height * 0.24, chance.nextInt(2) == 0 ? light.accent() : light.pale());
            }
            x += width + 2;
        }
    }

    final Color mix(Color first, Color second, double share) {
        return new Color(
                (int) (first.getRed() * (1 - share) + second.getRed() * share),
                (int) (first.getGreen() * (1 - share) + second.getGreen() * share),
                (int) (first.getBlue() * (1 - share) + second.getBlue() * share));
    }

    private int px(double units) {
        return (int) Math.round(units * scale);
    }
}
