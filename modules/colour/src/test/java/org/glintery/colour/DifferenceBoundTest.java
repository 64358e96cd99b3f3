package org.glintery.colour;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DifferenceBoundTest {

    @Test
    void isNeverAboveTheDifference_forAnyTwoColours() {
        long seed = 21;
        Random random = new Random(seed);
        double used = 0;
        int pairs = 1_000_000;
        for (int i = 0; i < pairs; i++) {
            Lab one = new Lab(100 * random.nextDouble(), spread(random), spread(random));
            double nearness = Math.pow(random.nextDouble(), 4);
            Lab other = new Lab(
                    one.l() + nearness * (100 * random.nextDouble() - one.l()),
                    one.a() + nearness * (spread(random) - one.a()),
                    one.b() + nearness * (spread(random) - one.b()));
            double bound = Math.sqrt(squared(one, other));
            double difference = Ciede2000.difference(one, other);
            assertThat(bound).as("seed %d, %s %s", seed, one, other).isLessThanOrEqualTo(difference);
            used += difference == 0 ? 1 : bound / difference;
        }
        // a bound that is nothing would save nothing
        assertThat(used / pairs).isGreaterThan(.5);
    }

    @Test
    void isNeverAboveTheDifference_amongTheSaturatedBlues() {
        long seed = 22;
        Random random = new Random(seed);
        for (int i = 0; i < 300_000; i++) {
            Lab one = blue(random);
            Lab other = blue(random);
            assertThat(Math.sqrt(squared(one, other)))
                    .as("seed %d, %s %s", seed, one, other)
                    .isLessThanOrEqualTo(Ciede2000.difference(one, other));
        }
    }

    private static double squared(Lab one, Lab other) {
        return new ColourSet(List.of(one))
                .leastSquared(
                        0, other.l(), other.a(), other.b(), other.chroma(), DifferenceBound.lightnessWeight(other.l()));
    }

    private static double spread(Random random) {
        return 280 * random.nextDouble() - 140;
    }

    private static Lab blue(Random random) {
        double hue = Math.toRadians(275 + 30 * random.nextGaussian());
        double chroma = 140 * random.nextDouble();
        return new Lab(100 * random.nextDouble(), chroma * Math.cos(hue), chroma * Math.sin(hue));
    }
}
