package org.glintery.workbench.sheet;

import java.awt.Color;
import java.util.Arrays;
import java.util.BitSet;

/**
 * Draws the part of a chart that a view shows, pixel by pixel: for each row of the screen the row of cells is found
 * once, for each pixel its colour is looked up. So a frame costs the same at every zoom. Not thread-safe: one a sheet.
 */
final class SheetPainter {
    private static final int HATCH_APART_PX = 7;
    private static final int HATCH_INK = 150;
    private static final int LAID_TINT = 26;
    private static final int SELECTED_TINT = 110;

    private int[] columnOf = new int[0];
    private int[] insideOf = new int[0];

    /**
     * What lies over the drills.
     *
     * @param laid cells that are hatched
     * @param selected cells that are tinted
     * @param desk what lies around the canvas
     */
    record Overlay(BitSet laid, BitSet selected, Color ink, Color desk) {}

    /** Fills {@code width * height} pixels of the screen with 0xRRGGBB. @param scale screen pixels a view pixel */
    void paint(int[] pixels, int width, int height, SheetScene scene, SheetView logical, double scale, Overlay over) {
        SheetView view = logical.scaled(scale);
        SheetCells cells = scene.cells();
        int from = Math.max(0, (int) Math.ceil(-view.left() * view.cellPx() - 0.5));
        int to = Math.min(width, (int) Math.ceil((cells.columns() - view.left()) * view.cellPx() - 0.5));
        int desk = over.desk().getRGB() & 0xFFFFFF;
        boolean drawn = view.cellPx() >= SheetScene.LEAST_SPRITE_PX;
        Overview.Step step = scene.overview().forCellPx(view.cellPx());
        Sprites sprites = scene.spritesFor(view.cellPx());
        place(width, from, to, cells.columns(), view, sprites.side());
        for (int y = 0; y < height; y++) {
            int at = y * width;
            double row = view.top() + (y + 0.5) / view.cellPx();
            if (row < 0 || row >= cells.rows() || from >= to) {
                Arrays.fill(pixels, at, at + width, desk);
                continue;
            }
            Arrays.fill(pixels, at, at + from, desk);
            Arrays.fill(pixels, at + to, at + width, desk);
            int base = (int) row * cells.columns();
            if (drawn) {
                int inside = (int) ((row - (int) row) * sprites.side()) * sprites.side();
                drills(pixels, at, from, to, cells.raw(), base, sprites.pixels(), inside);
            } else {
                patches(pixels, at, from, to, step, ((int) row >> step.shift()) * step.columns());
            }
            overlay(pixels, at, from, to, y, base, over);
        }
    }

    private void place(int width, int from, int to, int columns, SheetView view, int side) {
        if (columnOf.length < width) {
            columnOf = new int[width];
            insideOf = new int[width];
        }
        for (int x = from; x < to; x++) {
            double column = view.left() + (x + 0.5) / view.cellPx();
            columnOf[x] = Math.max(0, Math.min(columns - 1, (int) column));
            insideOf[x] = Math.max(0, Math.min(side - 1, (int) ((column - (int) column) * side)));
        }
    }

    private void drills(
            int[] pixels, int at, int from, int to, short[] lines, int base, int[][] sprites, int insideRow) {
        for (int x = from; x < to; x++) {
            int line = lines[base + columnOf[x]];
            pixels[at + x] = line < 0 ? SheetScene.CANVAS_RGB : sprites[line][insideRow + insideOf[x]];
        }
    }

    private void patches(int[] pixels, int at, int from, int to, Overview.Step step, int base) {
        int[] rgb = step.rgb();
        for (int x = from; x < to; x++) {
            pixels[at + x] = rgb[base + (columnOf[x] >> step.shift())];
        }
    }

    private void overlay(int[] pixels, int at, int from, int to, int y, int base, Overlay over) {
        int ink = over.ink().getRGB();
        if (any(over.laid(), base, from, to)) {
            for (int x = from; x < to; x++) {
                if (over.laid().get(base + columnOf[x])) {
                    pixels[at + x] = mixed(pixels[at + x], ink, (x + y) % HATCH_APART_PX == 0 ? HATCH_INK : LAID_TINT);
                }
            }
        }
        if (any(over.selected(), base, from, to)) {
            for (int x = from; x < to; x++) {
                if (over.selected().get(base + columnOf[x])) {
                    pixels[at + x] = mixed(pixels[at + x], ink, SELECTED_TINT);
                }
            }
        }
    }

    private boolean any(BitSet cells, int base, int from, int to) {
        int next = cells.nextSetBit(base + columnOf[from]);
        return next >= 0 && next <= base + columnOf[to - 1];
    }

    /** @param share of the second colour, 0 to 256 */
    private static int mixed(int first, int second, int share) {
        int redBlue = (first & 0xFF00FF) * (256 - share) + (second & 0xFF00FF) * share >>> 8 & 0xFF00FF;
        int green = (first & 0xFF00) * (256 - share) + (second & 0xFF00) * share >>> 8 & 0xFF00;
        return redBlue | green;
    }
}
