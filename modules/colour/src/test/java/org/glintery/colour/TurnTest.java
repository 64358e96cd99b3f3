package org.glintery.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TurnTest {

    @Test
    void isTheAngleOfAnyDirection() {
        long seed = 31;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 1_000_000; i++) {
            double angle = Math.PI * (2 * random.nextDouble() - 1);
            double length = Math.pow(10, 4 * random.nextDouble() - 2);
            double y = length * Math.sin(angle);
            double x = length * Math.cos(angle);
            assertThat(Turn.of(y, x)).as("seed %d, %s", seed, angle).isCloseTo(Math.atan2(y, x), within(1e-15));
        }
        assertThat(Turn.of(0, 1)).isZero();
        assertThat(Turn.of(1, 0)).isEqualTo(Math.PI / 2);
        assertThat(Turn.of(-1, 1e-300)).isCloseTo(-Math.PI / 2, within(1e-15));
    }
}
