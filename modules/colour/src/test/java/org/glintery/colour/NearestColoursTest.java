package org.glintery.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class NearestColoursTest {

    private static final List<Lab> CARD = ColourNames.isccNbs().all().stream()
            .map(named -> named.colour().lab())
            .toList();

    @Test
    void isTheOneFoundByTryingAll_forAMillionScreenColours() {
        same(CARD, 31, 1_000_000, random -> Srgb.ofRgb(random.nextInt()).lab());
    }

    @Test
    void isTheOneFoundByTryingAll_forColoursThatNoScreenShows() {
        same(
                CARD,
                32,
                50_000,
                random -> new Lab(
                        160 * random.nextDouble() - 30,
                        400 * random.nextDouble() - 200,
                        400 * random.nextDouble() - 200));
    }

    @Test
    void isTheFirst_amongEquallyNearOnes() {
        List<Lab> twice = new ArrayList<>(CARD);
        twice.addAll(CARD);
        same(twice, 33, 20_000, random -> CARD.get(random.nextInt(CARD.size())));
        assertThat(new NearestColours(twice).nearest(CARD.get(200))).isEqualTo(200);
    }

    @Test
    void isTheOneFoundByTryingAll_amongFewFarColours() {
        for (int size : new int[] {1, 2, 5}) {
            same(
                    CARD.subList(40, 40 + size),
                    34 + size,
                    50_000,
                    random -> Srgb.ofRgb(random.nextInt()).lab());
        }
    }

    @Test
    void needsAColour() {
        assertThatThrownBy(() -> new NearestColours(List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    private static void same(List<Lab> card, long seed, int colours, Function<SplittableRandom, Lab> colour) {
        NearestColours nearest = new NearestColours(card);
        long differing = IntStream.range(0, colours)
                .parallel()
                .filter(i -> {
                    Lab one = colour.apply(new SplittableRandom(seed * colours + i));
                    return nearest.nearest(one) != byTryingAll(card, one);
                })
                .count();
        assertThat(differing).as("of %d colours, seed %d", colours, seed).isZero();
    }

    private static int byTryingAll(List<Lab> card, Lab colour) {
        int nearest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < card.size(); i++) {
            double difference = Ciede2000.difference(colour, card.get(i));
            if (difference < least) {
                nearest = i;
                least = difference;
            }
        }
        return nearest;
    }
}
