package org.glintery.charts.shading;

/**
 * The eight cells about one, for telling how many strays another drill in it would make: a stray is a drill with none of
 * its kind in the eight cells about it. Filled anew for each cell; not safe for several threads.
 */
final class Surroundings {

    private final int columns;
    private final int rows;
    private final int[] drills;
    private final int[] near = new int[8];
    /** Whether such a neighbour would be a stray if it were not for this cell. */
    private final boolean[] lonely = new boolean[8];

    private int count;

    Surroundings(int columns, int rows, int[] drills) {
        this.columns = columns;
        this.rows = rows;
        this.drills = drills;
    }

    /** Looks about a cell. */
    void about(int row, int column) {
        count = 0;
        for (int y = Math.max(0, row - 1); y <= Math.min(rows - 1, row + 1); y++) {
            for (int x = Math.max(0, column - 1); x <= Math.min(columns - 1, column + 1); x++) {
                int drill = drills[y * columns + x];
                if (drill != Shader.NONE && (y != row || x != column)) {
                    near[count] = drill;
                    lonely[count] = isLonely(y, x, drill, row, column);
                    count++;
                }
            }
        }
    }

    private boolean isLonely(int row, int column, int drill, int exceptRow, int exceptColumn) {
        for (int y = Math.max(0, row - 1); y <= Math.min(rows - 1, row + 1); y++) {
            for (int x = Math.max(0, column - 1); x <= Math.min(columns - 1, column + 1); x++) {
                boolean other = (y != row || x != column) && (y != exceptRow || x != exceptColumn);
                if (other && drills[y * columns + x] == drill) {
                    return false;
                }
            }
        }
        return true;
    }

    /** How many of this cell and its neighbours are strays with such a drill in the cell. */
    int strays(int drill) {
        int strays = 0;
        boolean alone = true;
        for (int i = 0; i < count; i++) {
            if (near[i] == drill) {
                alone = false;
            } else if (lonely[i]) {
                strays++;
            }
        }
        return alone ? strays + 1 : strays;
    }

    /** Whether the cell itself is one. */
    boolean isStray(int drill) {
        for (int i = 0; i < count; i++) {
            if (near[i] == drill) {
                return false;
            }
        }
        return true;
    }
}
