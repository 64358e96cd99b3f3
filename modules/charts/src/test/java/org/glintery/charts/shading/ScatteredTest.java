package org.glintery.charts.shading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.glintery.charts.picture.LightGrid;
import org.glintery.colour.LinearRgb;
import org.glintery.colour.Srgb;
import org.junit.jupiter.api.Test;

class ScatteredTest {

    @Test
    void takesEveryCellOfTheTileOnce() {
        int[] order = BlueNoise.order().clone();
        Arrays.sort(order);
        assertThat(order)
                .isEqualTo(IntStream.range(0, BlueNoise.EDGE * BlueNoise.EDGE).toArray());
    }

    /** Ulichney, 1993: in blue noise no two of the first few lie near each other. */
    @Test
    void keepsEarlyCellsApart() {
        int[] order = BlueNoise.order();
        int early = order.length / 32;
        int nearest = Integer.MAX_VALUE;
        for (int one = 0; one < early; one++) {
            for (int other = 0; other < one; other++) {
                nearest = Math.min(nearest, squaredDistance(order[one], order[other]));
            }
        }
        // cells of the mean share, 32, have a distance of about 5.7; at random many would touch
        assertThat(nearest).isGreaterThanOrEqualTo(9);
    }

    private static int squaredDistance(int one, int other) {
        int x = Math.abs(one % BlueNoise.EDGE - other % BlueNoise.EDGE);
        int y = Math.abs(one / BlueNoise.EDGE - other / BlueNoise.EDGE);
        int across = Math.min(x, BlueNoise.EDGE - x);
        int down = Math.min(y, BlueNoise.EDGE - y);
        return across * across + down * down;
    }

    @Test
    void keepsTheMeanOfLight_andLaysNothingInBlankCells() {
        LightGrid grey = LightGrid.of(
                128, 96, cell -> cell % 7 == 0 ? Optional.empty() : Optional.of(new LinearRgb(0.3, 0.3, 0.3)));
        DrillColours colours = new DrillColours(List.of(Srgb.BLACK, Srgb.WHITE));
        int[] drills = new Scattered().shaded(grey, colours);
        long laid = Arrays.stream(drills).filter(drill -> drill != Shader.NONE).count();
        long white = Arrays.stream(drills).filter(drill -> drill == 1).count();
        assertThat(laid)
                .isEqualTo(IntStream.range(0, grey.cells())
                        .filter(cell -> cell % 7 != 0)
                        .count());
        // a tenth of each error is let go
        assertThat(white / (double) laid).isBetween(0.26, 0.34);
    }
}
