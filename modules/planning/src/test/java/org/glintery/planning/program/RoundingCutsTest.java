package org.glintery.planning.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RoundingCutsTest {

    private static final long SEED = 5;

    @Test
    void cutsOffTheValues_butNeverAWholeSolution() {
        Random random = new Random(SEED);
        int found = 0;
        for (int i = 0; i < 3_000; i++) {
            SmallPrograms small = new SmallPrograms(random);
            double[] values = new double[small.most.length];
            for (int column = 0; column < values.length; column++) {
                values[column] = random.nextDouble() * small.most[column];
            }
            List<RoundingCuts.Cut> cuts =
                    new RoundingCuts(small.conditions, small.least, small.most, small.linkOf).brokenBy(values);
            String which = "seed " + SEED + " program " + i;
            for (RoundingCuts.Cut cut : cuts) {
                assertThat(cut.row().beyond(values)).as(which).isPositive();
                small.solutions(
                        whole -> assertThat(cut.row().beyond(whole)).as(which).isLessThanOrEqualTo(0));
                small.solutions(whole -> assertThat(cut.row().at(whole))
                        .as(which)
                        .isGreaterThanOrEqualTo(cut.row().low()));
            }
            found += cuts.size();
        }
        assertThat(found).as("cuts").isGreaterThan(500);
    }
}
