package org.glintery.planning;

import org.glintery.api.Preview;

/**
 * The opening of a frame as it is sold, measured in the rebate.
 *
 * @param name as it stands on the shelf: "A3", "40 x 50 cm", "16 x 20 in"
 * @param shortUm the shorter side; equal to the longer for a square
 * @param longUm the longer side
 */
@Preview(since = "1.0")
public record FrameSize(String name, long shortUm, long longUm) {

    /** @throws IllegalArgumentException unless 0 < short <= long */
    public FrameSize {
        if (shortUm <= 0 || longUm < shortUm) {
            throw new IllegalArgumentException("no such frame: " + shortUm + " by " + longUm + " um");
        }
    }

    static FrameSize cm(int shortCm, int longCm) {
        return new FrameSize(shortCm + " x " + longCm + " cm", shortCm * 10_000L, longCm * 10_000L);
    }

    static FrameSize inches(int shortIn, int longIn) {
        return new FrameSize(shortIn + " x " + longIn + " in", shortIn * Inches.UM_AN_INCH, longIn * Inches.UM_AN_INCH);
    }

    public double areaM2() {
        return Glazing.areaM2(shortUm, longUm);
    }
}
