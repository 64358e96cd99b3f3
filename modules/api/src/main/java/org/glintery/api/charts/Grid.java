package org.glintery.api.charts;

import org.glintery.api.Stable;

/**
 * The cells of a chart.
 *
 * @param pitchMm from cell to cell; measured, never inferred from the drill's shape
 */
@Stable
public record Grid(int columns, int rows, double pitchMm) {

    public static final int MOST_CELLS = 4_000_000;

    /** Common practice, no published source: the pitch of a canvas for square drills. */
    public static final double USUAL_PITCH_MM = 2.5;

    /** @throws IllegalArgumentException for no cell, more than {@link #MOST_CELLS} or a pitch that is not positive */
    public Grid {
        if (columns < 1 || rows < 1 || (long) columns * rows > MOST_CELLS) {
            throw new IllegalArgumentException("not a grid: " + columns + " x " + rows);
        }
        if (!(pitchMm > 0) || Double.isInfinite(pitchMm)) {
            throw new IllegalArgumentException("not a pitch: " + pitchMm);
        }
    }

    /** As many whole cells as come nearest to a drilled area; at least one each way. */
    public static Grid ofSize(double widthMm, double heightMm, double pitchMm) {
        return new Grid(
                (int) Math.max(1, Math.round(widthMm / pitchMm)),
                (int) Math.max(1, Math.round(heightMm / pitchMm)),
                pitchMm);
    }

    public int cells() {
        return columns * rows;
    }

    public double widthMm() {
        return columns * pitchMm;
    }

    public double heightMm() {
        return rows * pitchMm;
    }
}
