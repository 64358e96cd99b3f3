package org.glintery.charts.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.glintery.api.charts.Shading;
import org.glintery.api.charts.Watch;
import org.glintery.charts.References;
import org.glintery.charts.TestPictures;
import org.glintery.charts.picture.LightGrid;
import org.glintery.charts.shading.DrillColours;
import org.glintery.charts.shading.LabGrid;
import org.glintery.charts.shading.Shader;
import org.glintery.charts.shading.Shaders;
import org.glintery.colour.Srgb;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StockedCellsTest {

    private static LightGrid cells(SplittableRandom random, int columns, int rows) {
        return LightGrid.of(
                columns,
                rows,
                cell -> random.nextInt(8) == 0
                        ? Optional.empty()
                        : Optional.of(Srgb.ofRgb(random.nextInt(1 << 24)).linear()));
    }

    private static List<Srgb> colours(SplittableRandom random, int count) {
        List<Srgb> colours = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            colours.add(Srgb.ofRgb(random.nextInt(1 << 24)));
        }
        return colours;
    }

    private static int drilled(LightGrid wanted) {
        return (int) IntStream.range(0, wanted.cells())
                .filter(cell -> !wanted.isBlank(cell))
                .count();
    }

    /** For all cells at least, unevenly. */
    private static int[] counts(SplittableRandom random, int colours, int cells, int spare) {
        int[] counts = new int[colours];
        int step = Math.max(1, cells / 40);
        for (int left = cells + spare; left > 0; left -= step) {
            counts[random.nextInt(1 + random.nextInt(colours))] += Math.min(step, left);
        }
        return counts;
    }

    private static void keepsTo(int[] counts, LightGrid wanted, int[] drills) {
        int[] laid = new int[counts.length];
        for (int cell = 0; cell < drills.length; cell++) {
            assertThat(drills[cell] == Shader.NONE).isEqualTo(wanted.isBlank(cell));
            if (drills[cell] != Shader.NONE) {
                laid[drills[cell]]++;
            }
        }
        for (int drill = 0; drill < counts.length; drill++) {
            assertThat(laid[drill]).isLessThanOrEqualTo(counts[drill]);
        }
    }

    private static double off(LightGrid wanted, DrillColours colours, int[] drills) {
        LabGrid lab = LabGrid.of(wanted);
        return IntStream.range(0, drills.length)
                .filter(cell -> drills[cell] != Shader.NONE)
                .mapToDouble(cell -> colours.difference(drills[cell], lab, cell))
                .sum();
    }

    @Test
    void isTheBestOfAllWays_onSmallCharts() {
        long seed = 4411;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 200; i++) {
            LightGrid wanted = cells(random, 3, 2);
            DrillColours colours = new DrillColours(colours(random, 4));
            int[] counts = counts(random, 4, drilled(wanted), random.nextInt(4));
            StockedCells stocked = new StockedCells(counts);
            int[] drills = stocked.shaded(wanted, colours);
            keepsTo(counts, wanted, drills);
            assertThat(off(wanted, colours, drills))
                    .as("seed %d, %d", seed, i)
                    .isCloseTo(least(wanted, colours, counts.clone(), new int[6], 0), within(1e-9));
            assertThat(stocked.gap()).as("seed %d, %d", seed, i).isLessThan(1e-9);
        }
    }

    private static double least(LightGrid wanted, DrillColours colours, int[] left, int[] drills, int cell) {
        if (cell == drills.length) {
            return off(wanted, colours, drills);
        }
        if (wanted.isBlank(cell)) {
            drills[cell] = Shader.NONE;
            return least(wanted, colours, left, drills, cell + 1);
        }
        double least = Double.POSITIVE_INFINITY;
        for (int drill = 0; drill < left.length; drill++) {
            if (left[drill] > 0) {
                left[drill]--;
                drills[cell] = drill;
                least = Math.min(least, least(wanted, colours, left, drills, cell + 1));
                left[drill]++;
            }
        }
        return least;
    }

    /** Beyond 20 000 colours cells of like colour are taken together: what is proven is for single cells all the same. */
    @ParameterizedTest
    @CsvSource({"100, 100, 0.000001", "260, 200, 0.01"})
    void isWithinAHundredthOfTheLeast_onAPhotograph(int columns, int rows, double most) {
        long seed = 4412;
        SplittableRandom random = new SplittableRandom(seed);
        LightGrid wanted = TestPictures.averaged(TestPictures.resource("china.jpg"), columns, rows);
        DrillColours colours = new DrillColours(References.isccNbs());
        for (int spare : new int[] {0, columns * rows / 2}) {
            int[] counts = counts(random, colours.size(), wanted.cells(), spare);
            StockedCells stocked = new StockedCells(counts);
            int[] drills = stocked.shaded(wanted, colours);
            keepsTo(counts, wanted, drills);
            assertThat(stocked.gap()).as("seed %d, spare %d", seed, spare).isBetween(0.0, most);
        }
    }

    @ParameterizedTest
    @CsvSource({"NONE, 0.3", "DIFFUSED, 0", "DIFFUSED, 0.3", "SCATTERED, 0", "SEARCHED, 0", "SEARCHED, 1"})
    void countsHold_withAnyShading(Shading shading, double strays) {
        long seed = 4413;
        SplittableRandom random = new SplittableRandom(seed);
        LightGrid photograph = TestPictures.averaged(TestPictures.resource("coffee.png"), 60, 60);
        LightGrid wanted = photograph.without(cell -> cell % 60 < 5);
        DrillColours colours = new DrillColours(References.palette(48));
        int[] counts = counts(random, 48, drilled(wanted), 40);
        int[] drills = Shaders.withinCounts(shading, strays, new StockedCells(counts), counts)
                .shaded(wanted, colours);
        keepsTo(counts, wanted, drills);
    }

    @Test
    void isTheFreeChart_whenThereAreEnoughOfAll() {
        LightGrid wanted = TestPictures.averaged(TestPictures.resource("coffee.png"), 60, 60);
        DrillColours colours = new DrillColours(References.palette(48));
        int[] counts = new int[48];
        java.util.Arrays.fill(counts, wanted.cells());
        for (Shading shading : List.of(Shading.NONE, Shading.DIFFUSED, Shading.SCATTERED)) {
            assertThat(Shaders.withinCounts(shading, 0, new StockedCells(counts), counts)
                            .shaded(wanted, colours))
                    .as("%s", shading)
                    .isEqualTo(Shaders.of(shading, 0).shaded(wanted, colours));
        }
    }

    @Test
    void theFewestToBuyAreTheFewest_onSmallCharts() {
        long seed = 4414;
        SplittableRandom random = new SplittableRandom(seed);
        int some = 0;
        for (int i = 0; i < 300; i++) {
            LightGrid wanted = cells(random, 3, 2);
            int drilled = drilled(wanted);
            List<Srgb> card = colours(random, 6);
            DrillColours all = new DrillColours(card);
            DrillColours stocked = new DrillColours(card.subList(0, 3));
            int[] counts = counts(random, 3, Math.max(0, drilled - random.nextInt(3)), random.nextInt(3));
            int[] bought = FewestToBuy.of(wanted, all, stocked, counts, Watch.NONE);
            LabGrid lab = LabGrid.of(wanted);
            double enough = 1e-9;
            for (int cell = 0; cell < wanted.cells(); cell++) {
                int at = cell;
                enough += wanted.isBlank(cell)
                        ? 0
                        : FewestToBuy.WITHIN
                                + IntStream.range(0, 6)
                                        .mapToDouble(drill -> all.difference(drill, lab, at))
                                        .min()
                                        .orElseThrow();
            }
            int fewest = 0;
            while (!reaches(wanted, lab, all, counts.clone(), fewest, 0, enough)) {
                fewest++;
            }
            assertThat(IntStream.of(bought).sum()).as("seed %d, %d", seed, i).isEqualTo(fewest);
            int[] with = new int[6];
            for (int drill = 0; drill < 6; drill++) {
                with[drill] = bought[drill] + (drill < 3 ? counts[drill] : 0);
            }
            assertThat(off(wanted, all, new StockedCells(with).shaded(wanted, all)))
                    .as("seed %d, %d", seed, i)
                    .isLessThanOrEqualTo(enough);
            some += fewest > 0 ? 1 : 0;
        }
        assertThat(some).isBetween(50, 299);
    }

    /** Whether the cells from one on come so near with so many bought drills, which may be any. */
    private static boolean reaches(
            LightGrid wanted, LabGrid lab, DrillColours all, int[] left, int buy, int cell, double enough) {
        if (enough < 0) {
            return false;
        }
        if (cell == wanted.cells()) {
            return true;
        }
        if (wanted.isBlank(cell)) {
            return reaches(wanted, lab, all, left, buy, cell + 1, enough);
        }
        for (int drill = 0; drill < all.size(); drill++) {
            double after = enough - all.difference(drill, lab, cell);
            if (drill < left.length && left[drill] > 0) {
                left[drill]--;
                boolean reached = reaches(wanted, lab, all, left, buy, cell + 1, after);
                left[drill]++;
                if (reached) {
                    return true;
                }
            }
            if (buy > 0 && reaches(wanted, lab, all, left, buy - 1, cell + 1, after)) {
                return true;
            }
        }
        return false;
    }

    @Test
    void endsWhenCancelled() {
        LightGrid wanted = TestPictures.averaged(TestPictures.resource("coffee.png"), 60, 60);
        Watch cancelling = new Watch() {
            @Override
            public void reached(double share) {}

            @Override
            public boolean isCancelled() {
                return true;
            }
        };
        int[] counts = new int[48];
        counts[7] = wanted.cells();
        counts[9] = 10;
        assertThatThrownBy(() ->
                        new StockedCells(counts).shaded(wanted, new DrillColours(References.palette(48)), cancelling))
                .isInstanceOf(CancellationException.class);
    }
}
