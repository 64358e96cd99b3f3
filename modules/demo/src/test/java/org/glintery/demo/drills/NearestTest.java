package org.glintery.demo.drills;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.glintery.colour.Ciede2000;
import org.glintery.colour.Srgb;
import org.junit.jupiter.api.Test;

class NearestTest {
    private static final long SEED = 20_261_114;

    @Test
    void findsWhatAPlainSearchFinds() {
        var card = new DemoCard();
        var chance = new SplittableRandom(SEED);
        for (int n = 0; n < 500; n++) {
            int[] channels = IntStream.range(0, 3)
                    .map(i -> chance.nextInt(32) * 255 / 31)
                    .toArray();
            var wanted = new Srgb(channels[0], channels[1], channels[2]);
            double least = IntStream.range(0, card.size())
                    .mapToDouble(i ->
                            Ciede2000.difference(wanted.lab(), card.colour(i).lab()))
                    .min()
                    .orElseThrow();
            int found = card.nearest().of(channels[0], channels[1], channels[2]);
            assertThat(Ciede2000.difference(wanted.lab(), card.colour(found).lab()))
                    .as("seed %d, %s", SEED, wanted)
                    .isEqualTo(least);
        }
    }
}
