package org.glintery.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class DifferenceMetricTest {

    @Test
    void isTheSquareOfSmallDifferences() {
        long seed = 61;
        Random random = new Random(seed);
        double[] m = new double[6];
        for (int i = 0; i < 50_000; i++) {
            LinearRgb one = new LinearRgb(light(random), light(random), light(random));
            double size = 1e-4 * (one.red() + one.green() + one.blue() + 1e-3);
            double r = size * random.nextGaussian();
            double g = size * random.nextGaussian();
            double b = size * random.nextGaussian();
            DifferenceMetric.about(one, m);
            double expected = Math.sqrt(
                    m[0] * r * r + m[3] * g * g + m[5] * b * b + 2 * (m[1] * r * g + m[2] * r * b + m[4] * g * b));

            LinearRgb below = new LinearRgb(one.red() - r / 2, one.green() - g / 2, one.blue() - b / 2);
            LinearRgb above = new LinearRgb(one.red() + r / 2, one.green() + g / 2, one.blue() + b / 2);
            double difference = Ciede2000.difference(Lab.ofD65(below.xyz()), Lab.ofD65(above.xyz()));
            assertThat(expected).as("seed %d, %s", seed, one).isCloseTo(difference, within(0.01 * difference + 1e-6));
        }
    }

    @Test
    void isIsotropicInColour_atGrey() {
        double[] m = new double[6];
        DifferenceMetric.about(new LinearRgb(0.2, 0.2, 0.2), m);
        assertThat(m).doesNotContain(Double.NaN);
        assertThat(m[0] * m[3] - m[1] * m[1]).isPositive();
    }

    private static double light(Random random) {
        return Math.pow(random.nextDouble(), 2);
    }
}
