package org.glintery.demo.drills;

/**
 * Laid in blocks of fourteen by fourteen from the bottom row up, to and fro; in the last few blocks only some of the colours
 * are laid yet.
 *
 * @param share of the blocks, 0 to 1
 */
public record BlockByBlock(double share) implements Laying {
    private static final int SIDE = 14;
    private static final double OPEN_BLOCKS = 7;

    @Override
    public boolean laid(DrillGrid grid, int x, int y) {
        int across = (grid.columns() + SIDE - 1) / SIDE;
        int down = (grid.rows() + SIDE - 1) / SIDE;
        int row = (grid.rows() - 1 - y) / SIDE;
        int column = row % 2 == 0 ? x / SIDE : across - 1 - x / SIDE;
        double turn = row * across + column + OPEN_BLOCKS * ofColour(grid.at(x, y));
        return turn < share * across * down;
    }

    /** Which colours are laid early, 0 to 1. */
    private static double ofColour(int colour) {
        return (colour * 0.618034) % 1;
    }
}
