package org.glintery.workbench.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class SheetViewTest {
    private final SheetCells cells = SampleSheets.cells(new Random(1), 200, 100, 3);

    @Test
    void showsTheWholeChartInTheMiddle_whenFitted() {
        SheetView view = SheetView.fitting(cells, 800, 600);
        var box = view.boundsOf(0, 0, 200, 100);
        assertThat(box.getCenterX()).isCloseTo(400, within(1e-9));
        assertThat(box.getCenterY()).isCloseTo(300, within(1e-9));
        assertThat(box.getWidth()).isLessThan(800).isGreaterThan(700);
    }

    @Test
    void keepsWhatIsUnderThePointer_whenZoomed() {
        SheetView view = new SheetView(3, 10, 20);
        for (double factor : new double[] {0.01, 0.8, 1.25, 1000}) {
            SheetView zoomed = view.zoomedAt(120, 90, factor);
            assertThat(zoomed.left() + 120 / zoomed.cellPx()).isCloseTo(50, within(1e-9));
            assertThat(zoomed.top() + 90 / zoomed.cellPx()).isCloseTo(50, within(1e-9));
            assertThat(zoomed.cellPx()).isBetween(SheetView.LEAST_CELL_PX, SheetView.MOST_CELL_PX);
        }
    }

    @Test
    void leavesSomeOfTheChartInTheMiddle_howeverFarItIsDragged() {
        SheetView view = new SheetView(4, 0, 0).dragged(99_999, -99_999).kept(cells, 800, 600);
        assertThat(view.columnAt(400)).isZero();
        assertThat(view.rowAt(299)).isEqualTo(99);
    }
}
