package org.glintery.workbench.parts;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.LinearGradientPaint;
import java.awt.RadialGradientPaint;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Random;

/** Paints what a coating does to the face of a drill. */
final class CoatingPainter {
    private static final Color[] RAINBOW = {
        new Color(255, 120, 190, 150),
        new Color(120, 220, 255, 120),
        new Color(190, 255, 160, 130),
        new Color(255, 220, 120, 140),
        new Color(200, 140, 255, 150)
    };

    private CoatingPainter() {}

    static void over(Graphics2D g, Facets facets, DrillLook look) {
        Shape old = g.getClip();
        g.clip(facets.outline());
        Rectangle2D box = facets.outline().getBounds2D();
        switch (look.coating()) {
            case AB -> rainbow(g, facets, box);
            case METALLIC -> brushed(g, box);
            case PEARL -> lustre(g, facets, box);
            case GLITTER -> specks(g, box);
            case MATT -> grain(g, box);
            case NONE -> gleam(g, facets, look);
        }
        g.setClip(old);
    }

    private static void rainbow(Graphics2D g, Facets facets, Rectangle2D box) {
        g.setPaint(new LinearGradientPaint(
                (float) box.getMinX(),
                (float) box.getMinY(),
                (float) box.getMaxX(),
                (float) box.getMaxY(),
                new float[] {0, 0.27f, 0.5f, 0.72f, 1},
                RAINBOW));
        g.fill(facets.outline());
        g.setStroke(new BasicStroke((float) Math.max(0.7, facets.radius() * 0.07)));
        g.setColor(new Color(255, 255, 255, 170));
        g.draw(facets.table());
    }

    private static void brushed(Graphics2D g, Rectangle2D box) {
        g.setPaint(new LinearGradientPaint(
                (float) box.getMinX(),
                (float) box.getMinY(),
                (float) box.getMinX(),
                (float) box.getMaxY(),
                new float[] {0, 0.36f, 0.46f, 0.56f, 1},
                new Color[] {
                    new Color(0, 0, 0, 110),
                    new Color(255, 255, 255, 20),
                    new Color(255, 255, 255, 215),
                    new Color(255, 255, 255, 20),
                    new Color(0, 0, 0, 130)
                }));
        g.fill(box);
    }

    private static void lustre(Graphics2D g, Facets facets, Rectangle2D box) {
        g.setPaint(new RadialGradientPaint(
                (float) (facets.centreX() - facets.radius() * 0.25),
                (float) (facets.centreY() - facets.radius() * 0.3),
                (float) facets.radius(),
                new float[] {0, 0.55f, 1},
                new Color[] {new Color(255, 255, 255, 225), new Color(255, 250, 240, 90), new Color(255, 255, 255, 10)
                }));
        g.fill(box);
    }

    private static void specks(Graphics2D g, Rectangle2D box) {
        Random places = new Random(7); // the same specks in every painting
        int specks = (int) Math.max(10, box.getWidth());
        for (int i = 0; i < specks; i++) {
            double size = Math.max(0.9, box.getWidth() * (0.03 + 0.05 * places.nextDouble()));
            g.setColor(i % 3 == 0 ? new Color(0, 0, 0, 120) : new Color(255, 255, 255, 230));
            g.fill(new Rectangle2D.Double(
                    box.getX() + places.nextDouble() * box.getWidth(),
                    box.getY() + places.nextDouble() * box.getHeight(),
                    size,
                    size));
        }
    }

    private static void grain(Graphics2D g, Rectangle2D box) {
        g.setColor(new Color(255, 255, 255, 60));
        g.setStroke(new BasicStroke(0.6f));
        for (double y = box.getMinY() + 1.5; y < box.getMaxY(); y += 3) {
            g.draw(new Line2D.Double(box.getMinX(), y, box.getMaxX(), y));
        }
    }

    private static void gleam(Graphics2D g, Facets facets, DrillLook look) {
        if (look.colour().isEmpty()) {
            return;
        }
        double r = facets.radius();
        g.setColor(new Color(255, 255, 255, 150));
        g.fill(new Ellipse2D.Double(facets.centreX() - r * 0.38, facets.centreY() - r * 0.42, r * 0.3, r * 0.2));
    }
}
