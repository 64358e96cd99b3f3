package org.glintery.charts.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RankTest {

    @Test
    void isWhatStandsThereInOrder() {
        long seed = 4421;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 5_000; i++) {
            int kinds = 1 + random.nextInt(50);
            double[] values = random.doubles(1 + random.nextInt(40))
                    .map(value -> Math.floor(kinds * value))
                    .toArray();
            double[] rising = values.clone();
            Arrays.sort(rising);
            int place = random.nextInt(values.length);
            assertThat(Rank.of(values.clone(), place))
                    .as("seed %d, %d", seed, i)
                    .isEqualTo(rising[place]);
            assertThat(Rank.of(rising.clone(), place))
                    .as("seed %d, %d", seed, i)
                    .isEqualTo(rising[place]);
        }
    }
}
