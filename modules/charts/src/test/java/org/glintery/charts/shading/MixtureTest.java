package org.glintery.charts.shading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.glintery.colour.Ciede2000;
import org.glintery.colour.Lab;
import org.glintery.colour.LinearRgb;
import org.junit.jupiter.api.Test;

class MixtureTest {

    @Test
    void isTheLightItself_whenDrillsCanMixIt() {
        long seed = 141;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 3_000; i++) {
            DrillColours colours = Grids.colours(1 + random.nextInt(30), random.nextLong());
            double[] light = new double[3];
            double sum = 0;
            double[] share = new double[colours.size()];
            for (int drill = 0; drill < share.length; drill++) {
                share[drill] = -Math.log(random.nextDouble());
                sum += share[drill];
            }
            for (int drill = 0; drill < share.length; drill++) {
                light[0] += share[drill] / sum * colours.red[drill];
                light[1] += share[drill] / sum * colours.green[drill];
                light[2] += share[drill] / sum * colours.blue[drill];
            }
            Mixture mixture = new Mixture(colours.red, colours.green, colours.blue);
            assertThat(mixture.mix(light[0], light[1], light[2]))
                    .as("seed %d, %d", seed, i)
                    .isTrue();
            assertThat(mixture.mixedGreen).isCloseTo(light[1], within(1e-5));
        }
    }

    /** The form is only that of small differences: in one of twenty a mixture near by is nearer by a tenth. */
    @Test
    void isTheNearestMixture_whenTheLightIsOutOfReach() {
        long seed = 142;
        SplittableRandom random = new SplittableRandom(seed);
        List<Double> ratios = new ArrayList<>();
        Mixture mixture = null;
        DrillColours colours = null;
        for (int i = 0; i < 5_000; i++) {
            if (i % 50 == 0) {
                colours = Grids.colours(1 + random.nextInt(12), random.nextLong());
                mixture = new Mixture(colours.red, colours.green, colours.blue);
            }
            LinearRgb wanted = new LinearRgb(random.nextDouble(), random.nextDouble(), random.nextDouble());
            if (!mixture.mix(wanted.red(), wanted.green(), wanted.blue())) {
                ratios.add(toNearest(mixture, colours, wanted));
            }
        }
        assertThat(ratios).hasSizeGreaterThan(1_000);
        assertThat(ratios.stream().filter(ratio -> ratio > 1.1).count())
                .as("seed %d", seed)
                .isLessThanOrEqualTo(ratios.size() / 20);
    }

    /** How much farther the mixture is, under CIEDE2000, than those a step towards any drill. */
    private static double toNearest(Mixture mixture, DrillColours colours, LinearRgb wanted) {
        LinearRgb mixed = new LinearRgb(mixture.mixedRed, mixture.mixedGreen, mixture.mixedBlue);
        double nearest = difference(mixed, wanted);
        double reached = nearest;
        for (int drill = 0; drill < colours.size(); drill++) {
            for (double step : new double[] {0.02, 0.2}) {
                LinearRgb beside = new LinearRgb(
                        mixed.red() + step * (colours.red[drill] - mixed.red()),
                        mixed.green() + step * (colours.green[drill] - mixed.green()),
                        mixed.blue() + step * (colours.blue[drill] - mixed.blue()));
                nearest = Math.min(nearest, difference(beside, wanted));
            }
        }
        return reached / (nearest + 0.01);
    }

    private static double difference(LinearRgb one, LinearRgb other) {
        return Ciede2000.difference(Lab.ofD65(one.xyz()), Lab.ofD65(other.xyz()));
    }
}
