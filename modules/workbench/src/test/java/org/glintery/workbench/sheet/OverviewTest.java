package org.glintery.workbench.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.Random;
import org.glintery.colour.LinearRgb;
import org.glintery.colour.Srgb;
import org.junit.jupiter.api.Test;

class OverviewTest {
    private static final int GROUND = 0xF0F0F0;
    private final Random random = new Random(4);
    private final int[] rgb = random.ints(20, 0, 0x1000000).toArray();

    @Test
    void averagesInLinearLight_fourCellsAtATime() {
        SheetCells cells = SampleSheets.cells(random, 8, 8, rgb.length);
        Overview overview = Overview.of(cells, rgb, GROUND);
        Overview.Step half = overview.forCellPx(0.5);
        assertThat(half.shift()).isEqualTo(1);
        for (int row = 0; row < 4; row++) {
            for (int column = 0; column < 4; column++) {
                double red = 0;
                for (int i = 0; i < 4; i++) {
                    int line = cells.line((2 * row + i / 2) * 8 + 2 * column + i % 2);
                    red += Srgb.ofRgb(line < 0 ? GROUND : rgb[line]).linear().red() / 4;
                }
                int expected = new LinearRgb(red, red, red).srgb().red();
                // a table of 4 096 steps stands in for the transfer function: one step off in the darks
                assertThat(half.rgb()[row * 4 + column] >> 16 & 0xFF).isCloseTo(expected, within(2));
            }
        }
    }

    @Test
    void isTheSameAsMadeAnew_whenCellsChange() {
        for (int round = 0; round < 20; round++) {
            int columns = 1 + random.nextInt(40);
            int rows = 1 + random.nextInt(40);
            SheetCells before = SampleSheets.cells(random, columns, rows, rgb.length);
            BitSet which = new BitSet();
            random.ints(5, 0, before.count()).forEach(which::set);
            SheetCells after = before.painted(which, random.nextInt(rgb.length));
            Overview changed = Overview.of(before, rgb, GROUND).changed(after, which, rgb, GROUND);
            Overview anew = Overview.of(after, rgb, GROUND);
            for (double px = 1; px > 0.01; px /= 2) {
                assertThat(changed.forCellPx(px).rgb())
                        .isEqualTo(anew.forCellPx(px).rgb());
            }
        }
    }

    @Test
    void endsInOneCell_whateverTheSize() {
        SheetCells cells = SampleSheets.cells(random, 37, 3, rgb.length);
        assertThat(Overview.of(cells, rgb, GROUND).forCellPx(1e-6).rgb()).hasSize(1);
    }
}
