package org.glintery.demo.drills;

/** Which cells of a canvas have their drill. */
@FunctionalInterface
public interface Laying {
    Laying ALL = (grid, x, y) -> true;

    boolean laid(DrillGrid grid, int x, int y);

    /** How many drills are on the canvas. */
    default long count(DrillGrid grid) {
        long count = 0;
        for (int y = 0; y < grid.rows(); y++) {
            for (int x = 0; x < grid.columns(); x++) {
                count += laid(grid, x, y) ? 1 : 0;
            }
        }
        return count;
    }
}
