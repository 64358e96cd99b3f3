package org.glintery.charts.shading;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.glintery.charts.picture.LightGrid;
import org.glintery.colour.LinearRgb;
import org.glintery.colour.Srgb;

/** Grids and colours at random. */
final class Grids {

    private Grids() {}

    /** Soft waves with grain; some cells blank when asked for. */
    static LightGrid waves(int columns, int rows, long seed, boolean blanks) {
        SplittableRandom random = new SplittableRandom(seed);
        double turn = random.nextDouble();
        return LightGrid.of(columns, rows, cell -> {
            double x = cell % columns / (double) columns;
            double y = cell / columns / (double) rows;
            boolean blank = blanks && random.nextInt(9) == 0;
            return blank
                    ? Optional.empty()
                    : Optional.of(new LinearRgb(
                            light(random, 0.3 + 0.3 * Math.sin(6 * x + turn)),
                            light(random, 0.4 * y + 0.2 * x),
                            light(random, 0.3 + 0.3 * Math.cos(5 * y - 4 * x))));
        });
    }

    private static double light(SplittableRandom random, double middle) {
        return Math.max(0, Math.min(1, middle + 0.05 * (random.nextDouble() - 0.5)));
    }

    static DrillColours colours(int count, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Srgb> colours = IntStream.range(0, count)
                .mapToObj(i -> Srgb.ofRgb(random.nextInt()))
                .toList();
        return new DrillColours(colours);
    }
}
