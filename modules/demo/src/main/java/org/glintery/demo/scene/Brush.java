package org.glintery.demo.scene;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.LinearGradientPaint;
import java.awt.Paint;
import java.awt.RadialGradientPaint;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/** Draws shapes in thousandths of the picture's width. Not safe for use by several threads. */
final class Brush {
    private final Graphics2D g;
    private final double tall;

    Brush(BufferedImage image) {
        double scale = image.getWidth() / 1000.0;
        tall = image.getHeight() / scale;
        g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.scale(scale, scale);
    }

    /** The height in the picture's own units. */
    double tall() {
        return tall;
    }

    void done() {
        g.dispose();
    }

    void fill(Paint paint, Shape shape) {
        g.setPaint(paint);
        g.fill(shape);
    }

    /** Only inside the shape until {@link #anywhere}. */
    void onlyIn(Shape shape) {
        g.setClip(shape);
    }

    void anywhere() {
        g.setClip(null);
    }

    void box(double x, double y, double width, double height, Color colour) {
        fill(colour, new Rectangle2D.Double(x, y, width, height));
    }

    void disc(double x, double y, double radius, Color colour) {
        fill(colour, new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
    }

    void oval(double x, double y, double across, double down, Color colour) {
        fill(colour, new Ellipse2D.Double(x - across, y - down, 2 * across, 2 * down));
    }

    void ring(double x, double y, double radius, double width, Color colour) {
        stroke(width, colour);
        g.draw(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
    }

    void line(double x1, double y1, double x2, double y2, double width, Color colour) {
        stroke(width, colour);
        g.draw(new Line2D.Double(x1, y1, x2, y2));
    }

    /** Straight from corner to corner; pairs of x and y. */
    void poly(Color colour, double... points) {
        fill(colour, path(points));
    }

    static Path2D path(double... points) {
        var path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        for (int i = 2; i < points.length; i += 2) {
            path.lineTo(points[i], points[i + 1]);
        }
        path.closePath();
        return path;
    }

    /** A smooth line through the points; pairs of x and y. */
    void curve(double width, Color colour, double... points) {
        stroke(width, colour);
        g.draw(Curves.through(false, points));
    }

    /** A smooth closed shape through the points; pairs of x and y. */
    void blob(Color colour, double... points) {
        fill(colour, Curves.through(true, points));
    }

    /** A rope: a thick line with its lay drawn across. */
    void rope(double x1, double y1, double x2, double y2, double width, Color colour) {
        line(x1, y1, x2, y2, width, Tone.dim(colour, 0.35));
        line(x1, y1 - width * 0.12, x2, y2 - width * 0.12, width * 0.62, colour);
        double length = Math.hypot(x2 - x1, y2 - y1);
        double ux = (x2 - x1) / length;
        double uy = (y2 - y1) / length;
        for (double t = width * 0.5; t < length; t += width * 1.1) {
            double x = x1 + ux * t;
            double y = y1 + uy * t;
            double half = width * 0.34;
            line(
                    x - (ux + uy) * half,
                    y - (uy - ux) * half,
                    x + (ux + uy) * half,
                    y + (uy - ux) * half,
                    width * 0.16,
                    Tone.dim(colour, 0.4));
        }
    }

    /** A smooth change of colours from top to bottom over the whole width. */
    void sweep(double top, double bottom, Color... colours) {
        fill(downwards(top, bottom, colours), new Rectangle2D.Double(0, top, 1000, bottom - top + 1));
    }

    static Paint downwards(double top, double bottom, Color... colours) {
        float[] stops = new float[colours.length];
        for (int i = 0; i < stops.length; i++) {
            stops[i] = (float) i / (stops.length - 1);
        }
        return new LinearGradientPaint(0, (float) top, 0, (float) bottom, stops, colours);
    }

    static Paint across(double left, double right, Color first, Color last) {
        return new GradientPaint((float) left, 0, first, (float) right, 0, last);
    }

    /** Light that falls off from a point. @param opacity at the middle, 0 to 1 */
    void glow(double x, double y, double radius, Color colour, double opacity) {
        var paint = new RadialGradientPaint(
                (float) x, (float) y, (float) radius, new float[] {0, 0.25f, 0.6f, 1}, new Color[] {
                    Tone.clear(colour, opacity),
                    Tone.clear(colour, opacity * 0.55),
                    Tone.clear(colour, opacity * 0.16),
                    Tone.clear(colour, 0)
                });
        fill(paint, new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
    }

    private void stroke(double width, Color colour) {
        g.setPaint(colour);
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    }
}
