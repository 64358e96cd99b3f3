package org.glintery.demo.drills;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;

/** Draws a canvas cell by cell: drills with their facets where they are laid, the printed symbol where they are not. */
public final class CanvasPicture {
    /** How many colours a picture may have. */
    public static final int MOST_COLOURS = DrillShades.MOST_COLOURS;

    private static final int WIDTH_PX = 800;

    private final DrillGrid grid;
    private final DrillShades shades;
    private final int cell;
    private final int stride;
    private final byte[] pixels;
    private final BufferedImage image;

    private CanvasPicture(DemoCard card, DrillGrid grid) {
        this.grid = grid;
        shades = new DrillShades(card, grid.used());
        cell = Math.max(4, Math.min(8, WIDTH_PX / grid.columns()));
        stride = grid.columns() * cell;
        image = new BufferedImage(stride, grid.rows() * cell, BufferedImage.TYPE_BYTE_INDEXED, shades.model());
        pixels = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    }

    /** Any thread. */
    public static BufferedImage of(DemoCard card, DrillGrid grid, Laying laying, boolean round) {
        var picture = new CanvasPicture(card, grid);
        for (int y = 0; y < grid.rows(); y++) {
            for (int x = 0; x < grid.columns(); x++) {
                picture.draw(x, y, laying.laid(grid, x, y), round);
            }
        }
        return picture.image;
    }

    private void draw(int column, int row, boolean laid, boolean round) {
        int colour = grid.at(column, row);
        int chance = (column * 73_856_093 ^ row * 19_349_663) >>> 5;
        for (int y = 0; y < cell; y++) {
            for (int x = 0; x < cell; x++) {
                int shade;
                if (!laid) {
                    shade = printed(x, y, colour);
                } else {
                    shade = round ? round(x, y, chance) : square(x, y, chance);
                }
                pixels[(row * cell + y) * stride + column * cell + x] = shades.of(colour, shade);
            }
        }
    }

    /** A bevel all round, lit from the upper left, and now and then a spark on the table facet. */
    private int square(int x, int y, int chance) {
        if (y == cell - 1) {
            return DrillShades.DARK;
        }
        if (x == cell - 1) {
            return DrillShades.SHADE;
        }
        if (y == 0) {
            return DrillShades.LIGHT;
        }
        if (x == 1 && y == 1 && chance % 3 == 0) {
            return DrillShades.SPARK;
        }
        return x == 0 || chance % 2 == 0 ? DrillShades.SECOND_FACE : DrillShades.FACE;
    }

    private int round(int x, int y, int chance) {
        double middle = (cell - 1) / 2.0;
        double dx = x - middle;
        double dy = y - middle;
        double out = Math.hypot(dx, dy) / (cell / 2.0);
        if (out > 1.02) {
            return DrillShades.DARK;
        }
        if (out > 0.62) {
            return dx + dy < -0.5 ? DrillShades.LIGHT : dx + dy > 0.5 ? DrillShades.SHADE : DrillShades.FACE;
        }
        boolean spark = dx < 0 && dy < 0 && chance % 2 == 0;
        return spark ? DrillShades.SPARK : chance % 3 == 0 ? DrillShades.SECOND_FACE : DrillShades.FACE;
    }

    /** A symbol of three by three dots in the middle of a pale cell: another one for each colour. */
    private int printed(int x, int y, int colour) {
        int from = (cell - 3) / 2;
        int column = x - from;
        int row = y - from;
        if (column < 0 || column > 2 || row < 0 || row > 2) {
            return DrillShades.PRINT;
        }
        int dots = (colour * 37 + 11) * 29 % 511 + 1;
        return (dots >> 3 * row + column & 1) != 0 ? DrillShades.MARK : DrillShades.PRINT;
    }
}
