package org.glintery.charts.picture;

/**
 * How a picture lies in its file: the place (x, y) as it is shown is found in the file at (u, v) = (x, y), or (y, x) when
 * swapped, each counted from its other end when flipped.
 */
public record Lie(boolean swapped, boolean flippedAcross, boolean flippedDown) {

    public static final Lie UPRIGHT = new Lie(false, false, false);

    /** By the number of Exif 2.32, tag 0112h; upright for a number that is none. */
    static Lie ofExif(int number) {
        return switch (number) {
            case 2 -> new Lie(false, true, false);
            case 3 -> new Lie(false, true, true);
            case 4 -> new Lie(false, false, true);
            case 5 -> new Lie(true, false, false);
            case 6 -> new Lie(true, false, true);
            case 7 -> new Lie(true, true, true);
            case 8 -> new Lie(true, true, false);
            default -> UPRIGHT;
        };
    }

    /** As this one, shown turned by quarters of a turn; to the right when positive. */
    public Lie turned(int quartersToTheRight) {
        Lie lie = this;
        for (int i = 0; i < Math.floorMod(quartersToTheRight, 4); i++) {
            lie = lie.swapped
                    ? new Lie(false, !lie.flippedAcross, lie.flippedDown)
                    : new Lie(true, lie.flippedAcross, !lie.flippedDown);
        }
        return lie;
    }
}
