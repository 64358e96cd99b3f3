package org.glintery.charts.shading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.glintery.colour.Lab;
import org.glintery.colour.LinearRgb;
import org.junit.jupiter.api.Test;

class LabConversionTest {

    @Test
    void isTheLabOfTheColourModule_forAnyLight() {
        long seed = 111;
        SplittableRandom random = new SplittableRandom(seed);
        double[] lab = new double[3];
        for (int i = 0; i < 200_000; i++) {
            double size = Math.pow(10, -6 * random.nextDouble());
            double red = size * (1.4 * random.nextDouble() - 0.2);
            double green = size * (1.4 * random.nextDouble() - 0.2);
            double blue = size * (1.4 * random.nextDouble() - 0.2);
            LabConversion.of(red, green, blue, lab);
            Lab expected = Lab.ofD65(new LinearRgb(red, green, blue).xyz());
            assertThat(lab[0]).as("seed %d", seed).isCloseTo(expected.l(), within(1e-10));
            assertThat(lab[1]).as("seed %d", seed).isCloseTo(expected.a(), within(1e-9));
            assertThat(lab[2]).as("seed %d", seed).isCloseTo(expected.b(), within(1e-9));
        }
    }
}
