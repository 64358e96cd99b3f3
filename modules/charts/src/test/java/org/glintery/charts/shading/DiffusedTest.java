package org.glintery.charts.shading;

import static org.assertj.core.api.Assertions.assertThat;

import org.glintery.charts.picture.LightGrid;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DiffusedTest {

    /** Blocks worked on side by side give what going cell by cell gives. */
    @ParameterizedTest
    @CsvSource({"1, 1", "1, 200", "200, 1", "63, 65", "64, 64", "150, 97", "257, 33", "40, 128"})
    void isWhatGoingCellByCellGives(int columns, int rows) {
        long seed = 131L * columns + rows;
        LightGrid wanted = Grids.waves(columns, rows, seed, true);
        DrillColours colours = Grids.colours(12, seed);
        DiffusedCells cells = new DiffusedCells(new Mixable(colours).mixed(wanted), colours);
        double[] lab = new double[3];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                cells.choose(row, column, lab);
            }
        }
        assertThat(new Diffused().shaded(wanted, colours)).as("seed %d", seed).isEqualTo(cells.drills());
    }
}
