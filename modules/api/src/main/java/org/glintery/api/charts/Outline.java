package org.glintery.api.charts;

import org.glintery.api.Stable;

/** Which cells of the grid are drilled. */
@Stable
public enum Outline {
    WHOLE,
    /** The largest circle about the middle. */
    CIRCLE,
    /** The ellipse that touches all four sides. */
    OVAL;

    /** Whether a cell's middle lies within. */
    public boolean holds(int columns, int rows, int column, int row) {
        if (this == WHOLE) {
            return true;
        }
        double radiusAcross = this == OVAL ? columns / 2.0 : Math.min(columns, rows) / 2.0;
        double radiusDown = this == OVAL ? rows / 2.0 : radiusAcross;
        double across = (column + 0.5 - columns / 2.0) / radiusAcross;
        double down = (row + 0.5 - rows / 2.0) / radiusDown;
        return across * across + down * down <= 1;
    }
}
