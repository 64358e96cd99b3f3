package org.glintery.charts.palette;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.glintery.charts.References;
import org.glintery.charts.TestPictures;
import org.glintery.charts.picture.LightGrid;
import org.glintery.charts.shading.LabGrid;
import org.glintery.colour.Ciede2000;
import org.glintery.colour.Lab;
import org.glintery.colour.Srgb;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PaletteChoiceTest {

    private static final Lab[] CARD =
            References.isccNbs().stream().map(Srgb::lab).toArray(Lab[]::new);

    private static final int EDGE = 50;

    /** All 267 colours are hardly better than the 24 used most of coffee: there nobody gains a tenth. */
    private static final double TENTH = 0.9;

    /**
     * No choice of so many colours is better by more than a hundredth, and so the mean error is a tenth below that of the
     * colours used most wherever any choice comes so low.
     */
    @ParameterizedTest
    @ValueSource(strings = {"coffee.png", "chelsea.png", "rocket.jpg", "china.jpg"})
    void isTheBestWithinAHundredth(String name) {
        LightGrid wanted = TestPictures.averaged(TestPictures.resource(name), EDGE, EDGE);
        LabGrid lab = LabGrid.of(wanted);
        float[][] distance = distances(lab, wanted.cells());
        for (int k : new int[] {12, 24, 48}) {
            int[] best = PaletteChoice.best(wanted, lab, CARD, new boolean[CARD.length], k);
            assertThat(best).hasSize(k).doesNotHaveDuplicates();
            double reached = sum(distance, best);
            double bound = MedoidBound.of(distance, k, reached);
            double used = sum(distance, mostUsed(distance, k));
            String as = "%s in %d: %.3f, bound %.3f, most used %.3f".formatted(name, k, reached, bound, used);
            assertThat(reached).as(as).isBetween(bound, 1.01 * bound);
            if (bound <= TENTH / 1.01 * used) {
                assertThat(reached).as(as).isLessThanOrEqualTo(TENTH * used);
            }
        }
    }

    /** Where many colours are used, a tenth can be gained. */
    @ParameterizedTest
    @ValueSource(ints = {12, 24})
    void isATenthBetterThanTheColoursUsedMost(int k) {
        LightGrid wanted = References.target(TestPictures.resource("china.jpg"));
        LabGrid lab = LabGrid.of(wanted);
        float[][] distance = distances(lab, wanted.cells());
        int[] best = PaletteChoice.best(wanted, lab, CARD, new boolean[CARD.length], k);
        assertThat(sum(distance, best)).isLessThanOrEqualTo(TENTH * sum(distance, mostUsed(distance, k)));
    }

    private static float[][] distances(LabGrid lab, int cells) {
        float[][] distance = new float[cells][CARD.length];
        for (int cell = 0; cell < cells; cell++) {
            Lab colour = new Lab(lab.l(cell), lab.a(cell), lab.b(cell));
            for (int i = 0; i < CARD.length; i++) {
                distance[cell][i] = (float) Ciede2000.difference(colour, CARD[i]);
            }
        }
        return distance;
    }

    private static int[] mostUsed(float[][] distance, int k) {
        long[] count = new long[CARD.length];
        for (float[] row : distance) {
            count[
                    IntStream.range(0, row.length)
                            .boxed()
                            .min(Comparator.comparingDouble(i -> row[i]))
                            .orElseThrow()]++;
        }
        return IntStream.range(0, CARD.length)
                .boxed()
                .sorted(Comparator.comparingLong(i -> -count[i]))
                .limit(k)
                .mapToInt(Integer::intValue)
                .toArray();
    }

    @Test
    void keepsWhatIsPinned_andTakesAllOfASmallCard() {
        LightGrid wanted = References.target(TestPictures.resource("coffee.png"));
        LabGrid lab = LabGrid.of(wanted);
        boolean[] pinned = new boolean[CARD.length];
        pinned[3] = true;
        pinned[200] = true;
        assertThat(PaletteChoice.best(wanted, lab, CARD, pinned, 5)).hasSize(5).contains(3, 200);
        assertThat(PaletteChoice.best(wanted, lab, CARD, pinned, 2)).containsExactly(3, 200);
        assertThat(PaletteChoice.best(wanted, lab, CARD, pinned, 500)).hasSize(CARD.length);
    }

    /** Small cases against all choices: exchanges seldom miss, and never by much. */
    @Test
    void isNearTheBestOfAllChoices() {
        long seed = 161;
        SplittableRandom random = new SplittableRandom(seed);
        int missed = 0;
        for (int i = 0; i < 300; i++) {
            int candidates = 8;
            int k = 1 + random.nextInt(4);
            float[][] distance = new float[12][candidates];
            for (float[] row : distance) {
                for (int c = 0; c < candidates; c++) {
                    row[c] = (float) random.nextDouble();
                }
            }
            boolean[] pinned = new boolean[candidates];
            pinned[0] = i % 3 == 0;
            double found = sum(distance, new Medoids(distance, pinned, k).chosen());
            double best = IntStream.range(0, 1 << candidates)
                    .filter(set -> Integer.bitCount(set) == k && (!pinned[0] || (set & 1) == 1))
                    .mapToDouble(set -> sum(
                            distance,
                            IntStream.range(0, candidates)
                                    .filter(c -> (set >> c & 1) == 1)
                                    .toArray()))
                    .min()
                    .orElseThrow();
            assertThat(found).as("seed %d, %d", seed, i).isLessThanOrEqualTo(1.2 * best);
            missed += found > best + 1e-5 ? 1 : 0;
        }
        assertThat(missed).isLessThan(60);
    }

    private static double sum(float[][] distance, int[] chosen) {
        return Arrays.stream(distance)
                .mapToDouble(row ->
                        IntStream.of(chosen).mapToDouble(c -> row[c]).min().orElse(Double.MAX_VALUE))
                .sum();
    }
}
