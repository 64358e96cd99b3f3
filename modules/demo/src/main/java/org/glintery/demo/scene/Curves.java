package org.glintery.demo.scene;

import java.awt.geom.Path2D;

/** Smooth curves through points (Catmull-Rom, as cubic pieces). */
final class Curves {
    private Curves() {}

    /** @param points pairs of x and y, at least three pairs */
    static Path2D through(boolean closed, double... points) {
        int count = points.length / 2;
        var path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        int pieces = closed ? count : count - 1;
        for (int i = 0; i < pieces; i++) {
            int before = at(i - 1, count, closed);
            int from = at(i, count, closed);
            int to = at(i + 1, count, closed);
            int after = at(i + 2, count, closed);
            path.curveTo(
                    points[2 * from] + (points[2 * to] - points[2 * before]) / 6,
                    points[2 * from + 1] + (points[2 * to + 1] - points[2 * before + 1]) / 6,
                    points[2 * to] - (points[2 * after] - points[2 * from]) / 6,
                    points[2 * to + 1] - (points[2 * after + 1] - points[2 * from + 1]) / 6,
                    points[2 * to],
                    points[2 * to + 1]);
        }
        if (closed) {
            path.closePath();
        }
        return path;
    }

    private static int at(int index, int count, boolean closed) {
        return closed ? Math.floorMod(index, count) : Math.max(0, Math.min(count - 1, index));
    }
}
