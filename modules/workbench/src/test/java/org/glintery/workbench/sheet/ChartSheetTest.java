package org.glintery.workbench.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ChartSheetTest {
    private final Random random = new Random(2);
    private final SheetCells cells = SampleSheets.cells(random, 40, 30, 6);
    private final List<LineLook> looks = SampleSheets.looks(random, 6);
    private final List<BitSet> selections = new ArrayList<>();
    private final List<BitSet> strokes = new ArrayList<>();
    private ChartSheet sheet;

    @BeforeEach
    void show() throws Exception {
        SwingUtilities.invokeAndWait(() -> sheet = new ChartSheet(Runnable::run, new SheetListener() {
            @Override
            public void selected(BitSet which) {
                selections.add(which);
            }

            @Override
            public void stroked(SheetTool tool, BitSet which) {
                strokes.add(which);
            }
        }));
        onScreen(() -> {
            sheet.setSize(448, 348);
            sheet.show(cells, looks, SheetStyle.DRILLS, new BitSet());
        });
        onScreen(() -> assertThat(sheet.view().cellPx()).isEqualTo(10));
    }

    private static void onScreen(Runnable work) throws Exception {
        SwingUtilities.invokeAndWait(work);
    }

    private void mouse(int id, int column, int row, int modifiers) {
        int x = (int) sheet.view().boundsOf(column, row, 1, 1).getCenterX();
        int y = (int) sheet.view().boundsOf(column, row, 1, 1).getCenterY();
        sheet.dispatchEvent(new MouseEvent(sheet, id, 0, modifiers, x, y, 1, false, MouseEvent.BUTTON1));
    }

    private void drag(int column, int row, int toColumn, int toRow, int modifiers) throws Exception {
        onScreen(() -> {
            mouse(MouseEvent.MOUSE_PRESSED, column, row, modifiers);
            mouse(MouseEvent.MOUSE_DRAGGED, toColumn, toRow, modifiers);
            mouse(MouseEvent.MOUSE_RELEASED, toColumn, toRow, modifiers);
        });
    }

    @Test
    void selectsABox_andAddsAnother_whenShiftIsHeld() throws Exception {
        onScreen(() -> sheet.setTool(SheetTool.BOX));
        drag(2, 3, 5, 4, 0);
        assertThat(selections).containsExactly(CellSets.box(cells, 2, 3, 5, 4));
        drag(10, 10, 10, 10, MouseEvent.SHIFT_DOWN_MASK);
        assertThat(selections.get(1).cardinality()).isEqualTo(9);
    }

    @Test
    void reportsAStroke_andLeavesTheChartToItsOwner() throws Exception {
        onScreen(() -> sheet.setTool(SheetTool.BRUSH));
        drag(1, 1, 6, 1, 0);
        assertThat(strokes).containsExactly(CellSets.stroke(cells, 1, 1, 6, 1));
        onScreen(() -> assertThat(sheet.cells()).isEqualTo(cells));
        onScreen(() -> sheet.change(cells.painted(strokes.get(0), 3), strokes.get(0)));
        onScreen(() -> assertThat(sheet.cells().line(41)).isEqualTo(3));
    }

    @Test
    void worksFromTheKeyboard() throws Exception {
        onScreen(() -> {
            sheet.setTool(SheetTool.PATCH);
            sheet.moveCursor(7, 9);
            sheet.useTool(false);
        });
        assertThat(selections).containsExactly(CellSets.patch(cells, 9 * 40 + 7));
        onScreen(() -> assertThat(sheet.getAccessibleContext().getAccessibleDescription())
                .startsWith("Column 8, row 10: "));
    }

    @Test
    void paintsInTheMiddleOfItsCells_whateverIsOverThem() throws Exception {
        BufferedImage image = new BufferedImage(448, 348, BufferedImage.TYPE_INT_RGB);
        onScreen(() -> {
            sheet.select(CellSets.box(cells, 0, 0, 1, 1), false);
            sheet.paintComponent(image.createGraphics());
        });
        SheetScene scene = SheetScene.of(cells, looks, SheetStyle.DRILLS);
        assertThat(scene.cells()).isEqualTo(cells);
        int untouched = 0;
        int[] rgb = SampleSheets.rgb(looks);
        for (int cell = 0; cell < cells.count(); cell++) {
            int seen = image.getRGB(24 + cell % 40 * 10 + 5, 24 + cell / 40 * 10 + 5) & 0xFFFFFF;
            int line = cells.line(cell);
            if (line >= 0 && near(seen, rgb[line])) {
                untouched++;
            }
        }
        assertThat(untouched).isGreaterThan(cells.count() * 3 / 4);
    }

    private static boolean near(int one, int other) {
        return Math.abs((one >> 16 & 0xFF) - (other >> 16 & 0xFF)) < 48
                && Math.abs((one >> 8 & 0xFF) - (other >> 8 & 0xFF)) < 48
                && Math.abs((one & 0xFF) - (other & 0xFF)) < 48;
    }
}
