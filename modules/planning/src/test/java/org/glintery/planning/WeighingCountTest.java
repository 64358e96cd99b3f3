package org.glintery.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class WeighingCountTest {

    // JCGM 100:2008 propagation: mu = .01 g, cv = 6 %, n0 = 50, N = 2000, d = .01 g gives u = 20.70.
    @Test
    void propagatesUncertainty_asTheGuideDoes() {
        WeighingCount.Counted counted = new WeighingCount(50, 0.5, 0.06, 0.01).count(20);
        assertThat(counted.count()).isEqualTo(2_000);
        assertThat(counted.uncertainty()).isCloseTo(20.70, within(0.005));
        assertThat(counted.trusted()).isTrue();
    }

    // Facts of the trade: a 1 g kitchen scale and a sample of 50 give about 1 155 at 2 000 drills.
    @Test
    void trustsNoNumber_whenTheScaleIsTooCoarse() {
        WeighingCount.Counted counted = new WeighingCount(50, 0.5, 0.06, 1).count(20);
        assertThat(counted.uncertainty()).isCloseTo(1_155, within(1.0));
        assertThat(counted.trusted()).isFalse();
    }

    // Weighings simulated here, readings rounded to the division, masses normal. The sample scatters by less than a
    // division, so its
    // rounding is not even, and the guide comes out a little above.
    @Test
    void agreesWithSimulatedWeighings() {
        long seed = 4;
        Random random = new Random(seed);
        double guide = new WeighingCount(50, 0.5, 0.06, 0.01).count(20).uncertainty();
        int rounds = 4_000;
        double squares = 0;
        for (int round = 0; round < rounds; round++) {
            double sampleG = weighed(random, 50);
            double error = new WeighingCount(50, sampleG, 0.06, 0.01)
                            .count(weighed(random, 2_000))
                            .count()
                    - 2_000.0;
            squares += error * error;
        }
        assertThat(Math.sqrt(squares / rounds)).as("seed %d", seed).isBetween(0.9 * guide, guide);
    }

    private static double weighed(Random random, int drills) {
        double massG = 0;
        for (int i = 0; i < drills; i++) {
            massG += 0.01 * (1 + 0.06 * random.nextGaussian());
        }
        return Math.round(massG / 0.01) * 0.01;
    }

    @Test
    void countsNone_ofAnEmptyHeap() {
        WeighingCount.Counted none = new WeighingCount(50, 0.5, 0.06, 0.01).count(0);
        assertThat(none.count()).isZero();
        assertThat(none.trusted()).isFalse();
    }

    @Test
    void refusesNoSample() {
        assertThatThrownBy(() -> new WeighingCount(0, 1, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new WeighingCount(5, 0, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new WeighingCount(5, 1, -1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new WeighingCount(5, 1, 0, 0).count(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
