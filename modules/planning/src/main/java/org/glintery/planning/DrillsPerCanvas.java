package org.glintery.planning;

import org.glintery.api.Preview;

/**
 * How many cells a drilled area has: whole columns times whole rows. The pitches given here are common practice, no
 * published source; the pitch belongs to the piece and is better measured: count 20 cells and divide.
 *
 * @param columns whole cells across
 * @param rows whole cells down
 */
@Preview(since = "1.0")
public record DrillsPerCanvas(long columns, long rows) {

    /** Square drills, 16 a square centimetre. Common practice, no published source. */
    public static final long SQUARE_PITCH_UM = 2_500;

    /** Round drills, about 12.8 a square centimetre. Common practice, no published source. */
    public static final long ROUND_PITCH_UM = 2_800;

    /**
     * A part of a cell at the edge holds no drill, so both numbers are rounded down.
     *
     * @throws IllegalArgumentException for a pitch that is not above 0, or a negative length
     */
    public static DrillsPerCanvas of(long widthUm, long heightUm, long pitchUm) {
        if (pitchUm <= 0 || widthUm < 0 || heightUm < 0) {
            throw new IllegalArgumentException("no grid: " + widthUm + " by " + heightUm + " um at " + pitchUm);
        }
        return new DrillsPerCanvas(widthUm / pitchUm, heightUm / pitchUm);
    }

    /** For full coverage. */
    public long drills() {
        return Math.multiplyExact(columns, rows);
    }
}
