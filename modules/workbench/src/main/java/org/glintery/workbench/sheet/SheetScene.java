package org.glintery.workbench.sheet;

import java.awt.Color;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * All that painting a chart needs, made ready beforehand so that a frame only copies pixels. Immutable; any thread.
 * Making one takes some tens of milliseconds for a large chart: not on the event thread.
 */
final class SheetScene {
    /** Below this side a cell is drawn as a plain patch: facets could not be told apart. */
    static final double LEAST_SPRITE_PX = 6;

    /** The colour of bare canvas. */
    static final int CANVAS_RGB = 0xF4F1EA;

    private static final int UNKNOWN_RGB = 0xD8D2C6;
    private static final int[] SIDES = {8, 16, 32, 64, 96};

    private final SheetCells cells;
    private final int[] lineRgb;
    private final Overview overview;
    private final List<Sprites> sprites;

    private SheetScene(SheetCells cells, int[] lineRgb, Overview overview, List<Sprites> sprites) {
        this.cells = cells;
        this.lineRgb = lineRgb;
        this.overview = overview;
        this.sprites = sprites;
    }

    static SheetScene of(SheetCells cells, List<LineLook> looks, SheetStyle style) {
        int[] lineRgb = looks.stream()
                .mapToInt(look -> look.drill()
                        .colour()
                        .map(Color::getRGB)
                        .map(style.sight()::seen)
                        .orElse(UNKNOWN_RGB))
                .toArray();
        List<Sprites> sprites = new ArrayList<>();
        for (int side : SIDES) {
            sprites.add(Sprites.of(looks, style, side, CANVAS_RGB));
        }
        return new SheetScene(cells, lineRgb, Overview.of(cells, lineRgb, CANVAS_RGB), List.copyOf(sprites));
    }

    /** The same with other lines in some cells; quick enough for the event thread. */
    SheetScene changed(SheetCells next, BitSet which) {
        return new SheetScene(next, lineRgb, overview.changed(next, which, lineRgb, CANVAS_RGB), sprites);
    }

    SheetCells cells() {
        return cells;
    }

    Overview overview() {
        return overview;
    }

    /** The smallest sprites that are not smaller than a cell. */
    Sprites spritesFor(double cellPx) {
        return sprites.stream()
                .filter(set -> set.side() >= cellPx - 0.01)
                .findFirst()
                .orElseGet(() -> sprites.get(sprites.size() - 1));
    }
}
