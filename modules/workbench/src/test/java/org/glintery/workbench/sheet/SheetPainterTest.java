package org.glintery.workbench.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.glintery.workbench.sheet.SheetPainter.Overlay;
import org.junit.jupiter.api.Test;

class SheetPainterTest {
    private static final int WIDTH = 320;
    private static final int HEIGHT = 200;
    private static final Color DESK = new Color(0x123456);
    private static final Overlay NOTHING_OVER = new Overlay(new BitSet(), new BitSet(), Color.BLACK, DESK);

    private final Random random = new Random(20);
    private final SheetCells cells = SampleSheets.cells(random, 61, 47, 12);
    private final List<LineLook> looks = SampleSheets.looks(random, 12);
    private final SheetScene scene = SheetScene.of(cells, looks, SheetStyle.DRILLS);
    private final int[] rgb = SampleSheets.rgb(looks);

    private int[] painted(SheetView view, double scale, Overlay over) {
        int[] pixels = new int[WIDTH * HEIGHT];
        new SheetPainter().paint(pixels, WIDTH, HEIGHT, scene, view, scale, over);
        return pixels;
    }

    private int flat(SheetView view, int x, int y) {
        int column = view.columnAt(x + 0.5);
        int row = view.rowAt(y + 0.5);
        if (!cells.holds(column, row)) {
            return DESK.getRGB() & 0xFFFFFF;
        }
        int line = cells.line(row * cells.columns() + column);
        return line < 0 ? SheetScene.CANVAS_RGB : rgb[line];
    }

    @Test
    void showsEachPixelsOwnCell_whenCellsArePatches() {
        for (int round = 0; round < 50; round++) {
            SheetView view = new SheetView(
                    1 + 4.9 * random.nextDouble(), -20 + 60 * random.nextDouble(), -20 + 50 * random.nextDouble());
            int[] pixels = painted(view, 1, NOTHING_OVER);
            for (int y = 0; y < HEIGHT; y++) {
                for (int x = 0; x < WIDTH; x++) {
                    assertThat(pixels[y * WIDTH + x])
                            .as("%s at %d, %d", view, x, y)
                            .isEqualTo(flat(view, x, y));
                }
            }
        }
    }

    @Test
    void copiesTheDrillIntoItsCell_whenCellsAreLarge() {
        SheetView view = new SheetView(32, 3, 5);
        int[] pixels = painted(view, 1, NOTHING_OVER);
        Sprites sprites = scene.spritesFor(32);
        assertThat(sprites.side()).isEqualTo(32);
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                int line = cells.line((5 + y / 32) * cells.columns() + 3 + x / 32);
                int expected = line < 0 ? SheetScene.CANVAS_RGB : sprites.pixels()[line][y % 32 * 32 + x % 32];
                assertThat(pixels[y * WIDTH + x]).isEqualTo(expected);
            }
        }
    }

    @Test
    void drawsInThePixelsOfTheScreen_whenItIsScaled() {
        SheetView view = new SheetView(2, 0, 0);
        assertThat(painted(view, 2, NOTHING_OVER)).isEqualTo(painted(new SheetView(4, 0, 0), 1, NOTHING_OVER));
    }

    @Test
    void hatchesWhatIsLaid_andTintsWhatIsSelected_only() {
        BitSet laid = CellSets.box(cells, 4, 4, 9, 9);
        BitSet selected = CellSets.box(cells, 12, 4, 14, 9);
        SheetView view = new SheetView(4, 0, 0);
        int[] plain = painted(view, 1, NOTHING_OVER);
        int[] over = painted(view, 1, new Overlay(laid, selected, Color.BLACK, DESK));
        int changed = 0;
        for (int i = 0; i < plain.length; i++) {
            int cell = view.rowAt(i / WIDTH + 0.5) * cells.columns() + view.columnAt(i % WIDTH + 0.5);
            boolean covered = cells.holds(view.columnAt(i % WIDTH + 0.5), view.rowAt(i / WIDTH + 0.5))
                    && (laid.get(cell) || selected.get(cell));
            if (plain[i] != over[i]) {
                changed++;
                assertThat(covered).isTrue();
            }
        }
        assertThat(changed).isGreaterThan((laid.cardinality() + selected.cardinality()) * 12);
    }

    @Test
    void fillsEverythingWithTheDesk_whenTheChartIsElsewhere() {
        int[] pixels = painted(new SheetView(3, 500, 500), 1, NOTHING_OVER);
        assertThat(pixels).containsOnly(DESK.getRGB() & 0xFFFFFF);
    }

    @Test
    void staysInBounds_atEveryZoomAndPlace() {
        for (int round = 0; round < 400; round++) {
            double side = SheetView.LEAST_CELL_PX
                    * Math.pow(SheetView.MOST_CELL_PX / SheetView.LEAST_CELL_PX, random.nextDouble());
            SheetView view = new SheetView(side, -80 + 160 * random.nextDouble(), -80 + 160 * random.nextDouble());
            assertThat(painted(view, 1, NOTHING_OVER)).as("%s", view).hasSize(WIDTH * HEIGHT);
        }
    }
}
