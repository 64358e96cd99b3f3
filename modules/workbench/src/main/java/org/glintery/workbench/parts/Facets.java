package org.glintery.workbench.parts;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/** The cut of a drill seen from above: an outline, facets round it and the table in its middle. Immutable. */
final class Facets {
    private static final double TABLE = 0.56;
    private static final int ROUND_CORNERS = 10;

    private final double centreX;
    private final double centreY;
    private final double radius;
    private final double[] angles;
    private final double[] reaches;
    private final boolean round;

    private Facets(double centreX, double centreY, double radius, double[] angles, double[] reaches, boolean round) {
        this.centreX = centreX;
        this.centreY = centreY;
        this.radius = radius;
        this.angles = angles;
        this.reaches = reaches;
        this.round = round;
    }

    /** @param radius half the side of the square it fits into */
    static Facets of(org.glintery.api.ledger.Shape shape, double centreX, double centreY, double radius) {
        double root = Math.sqrt(2) * 0.97;
        switch (shape) {
            case SQUARE:
                return new Facets(
                        centreX, centreY, radius, turns(4, Math.PI / 4), new double[] {root, root, root, root}, false);
            case ROUND:
                double[] even = new double[ROUND_CORNERS];
                java.util.Arrays.fill(even, 1);
                return new Facets(centreX, centreY, radius, turns(ROUND_CORNERS, Math.PI / ROUND_CORNERS), even, true);
            default:
                // a long six-sided cut stands for any special outline
                return new Facets(
                        centreX,
                        centreY,
                        radius,
                        new double[] {0.62, Math.PI / 2, Math.PI - 0.62, Math.PI + 0.62, -Math.PI / 2, -0.62},
                        new double[] {0.86, 1, 0.86, 0.86, 1, 0.86},
                        false);
        }
    }

    int count() {
        return angles.length;
    }

    double centreX() {
        return centreX;
    }

    double centreY() {
        return centreY;
    }

    double radius() {
        return radius;
    }

    Shape outline() {
        return round ? circle(1) : ring(1);
    }

    Shape table() {
        return ring(TABLE);
    }

    /** One facet between the table and the outline. */
    Shape facet(int i) {
        int next = (i + 1) % count();
        Path2D path = new Path2D.Double();
        path.moveTo(x(i, TABLE), y(i, TABLE));
        path.lineTo(x(i, 1), y(i, 1));
        if (round) {
            double middle = angles[i] + Math.PI / count();
            path.quadTo(
                    centreX + Math.cos(middle) * radius * 1.05,
                    centreY + Math.sin(middle) * radius * 1.05,
                    x(next, 1),
                    y(next, 1));
        } else {
            path.lineTo(x(next, 1), y(next, 1));
        }
        path.lineTo(x(next, TABLE), y(next, TABLE));
        path.closePath();
        return path;
    }

    /** How light falls on a facet from the upper left: -0.35 to 0.45. */
    double light(int i) {
        double dx = (x(i, 1) + x((i + 1) % count(), 1)) / 2 - centreX;
        double dy = (y(i, 1) + y((i + 1) % count(), 1)) / 2 - centreY;
        double facing = (-0.5 * dx - 0.85 * dy) / Math.max(1e-9, Math.hypot(dx, dy));
        return facing > 0 ? 0.45 * facing : 0.35 * facing;
    }

    /** Lines from the corners of the table to the outline, and across the table. */
    List<Shape> rays() {
        List<Shape> rays = new ArrayList<>();
        for (int i = 0; i < count(); i++) {
            rays.add(new Line2D.Double(centreX, centreY, x(i, 1), y(i, 1)));
        }
        return rays;
    }

    private static double[] turns(int count, double first) {
        double[] turns = new double[count];
        for (int i = 0; i < count; i++) {
            turns[i] = first + i * 2 * Math.PI / count;
        }
        return turns;
    }

    private Shape circle(double share) {
        double r = radius * share;
        return new Ellipse2D.Double(centreX - r, centreY - r, 2 * r, 2 * r);
    }

    private Shape ring(double share) {
        Path2D path = new Path2D.Double();
        path.moveTo(x(0, share), y(0, share));
        for (int i = 1; i < count(); i++) {
            path.lineTo(x(i, share), y(i, share));
        }
        path.closePath();
        return path;
    }

    private double x(int i, double share) {
        return centreX + Math.cos(angles[i]) * radius * reaches[i] * share;
    }

    private double y(int i, double share) {
        return centreY + Math.sin(angles[i]) * radius * reaches[i] * share;
    }
}
