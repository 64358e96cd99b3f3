package org.glintery.workbench.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.BitSet;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CellSetsTest {
    private static final SheetCells SMALL = SheetCells.of(5, 4, new short[] {
        0, 0, 1, 1, 1,
        0, 1, 1, 0, 0,
        0, 0, 0, 0, 1,
        2, 2, 0, 1, 1
    });

    @Test
    void takesBothCornersIntoABox_whicheverComesFirst() {
        BitSet box = CellSets.box(SMALL, 3, 2, 1, 1);
        assertThat(box.stream()).containsExactly(6, 7, 8, 11, 12, 13);
        assertThat(CellSets.box(SMALL, -9, -9, 99, 99).cardinality()).isEqualTo(20);
    }

    @Test
    void takesAllOfAColour_orOnlyWhatHangsTogetherByItsSides() {
        assertThat(CellSets.colour(SMALL, 1).stream()).containsExactly(2, 3, 4, 6, 7, 14, 18, 19);
        assertThat(CellSets.patch(SMALL, 3).stream()).containsExactly(2, 3, 4, 6, 7);
        assertThat(CellSets.patch(SMALL, 19).stream()).containsExactly(14, 18, 19);
        // cells 4 and 5 stand at the two ends of neighbouring rows and do not touch
        assertThat(CellSets.patch(SMALL, 4).get(5)).isFalse();
    }

    @Test
    void takesCellsWhoseMiddleIsInsideTheLasso() {
        Path2D circle = new Path2D.Double(new Ellipse2D.Double(2, 2, 6, 6));
        SheetCells cells = SampleSheets.cells(new Random(1), 10, 10, 3);
        BitSet inside = CellSets.lasso(cells, circle);
        for (int cell = 0; cell < 100; cell++) {
            double dx = cell % 10 + 0.5 - 5;
            double dy = cell / 10 + 0.5 - 5;
            assertThat(inside.get(cell)).as("cell %d", cell).isEqualTo(dx * dx + dy * dy < 9);
        }
    }

    @Test
    void drawsAStrokeWithoutGaps_andOnlyOnTheChart() {
        SheetCells cells = SampleSheets.cells(new Random(1), 40, 30, 3);
        Random random = new Random(8);
        for (int round = 0; round < 200; round++) {
            int c = random.nextInt(40);
            int r = random.nextInt(30);
            int d = random.nextInt(40);
            int s = random.nextInt(30);
            BitSet stroke = CellSets.stroke(cells, c, r, d, s);
            assertThat(stroke.cardinality()).isEqualTo(1 + Math.max(Math.abs(d - c), Math.abs(s - r)));
            assertThat(stroke.get(r * 40 + c) && stroke.get(s * 40 + d)).isTrue();
        }
        assertThat(CellSets.stroke(cells, -5, -5, -2, -9).isEmpty()).isTrue();
    }
}
