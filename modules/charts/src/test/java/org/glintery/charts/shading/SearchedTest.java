package org.glintery.charts.shading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.glintery.api.charts.Shading;
import org.glintery.charts.picture.LightGrid;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SearchedTest {

    private static final int COLUMNS = 34;
    private static final int ROWS = 40;

    private record Search(LightGrid wanted, DrillColours colours, EnergyWeights weights) {

        SearchedCells cells(int[] drills, SearchedCells.Moves moves) {
            LabGrid lab = LabGrid.of(wanted);
            CandidateDrills candidates = new CandidateDrills(wanted, lab, colours, 10);
            return new SearchedCells(wanted, colours, candidates, lab, weights, drills, moves, DrillsLeft.NO_LIMIT);
        }

        /** The energy counted from the cells alone, by a state that was never moved. */
        double energy(int[] drills) {
            return cells(drills.clone(), (cell, from, to, change) -> {}).energy();
        }
    }

    @ParameterizedTest
    @CsvSource({"0, seen", "0.3, seen", "1, seen", "0.5, cells"})
    void lowersTheEnergyAtEveryMove_byWhatItSays(double strays, String kind) {
        long seed = 151;
        EnergyWeights weights = kind.equals("seen") ? EnergyWeights.seen(strays) : EnergyWeights.cells(strays);
        LightGrid wanted = Grids.waves(COLUMNS, ROWS, seed, true);
        Search search = new Search(wanted, Grids.colours(16, seed), weights);
        int[] drills = new Scattered().shaded(wanted, search.colours());
        List<Double> energies = new ArrayList<>(List.of(search.energy(drills)));
        SearchedCells cells = search.cells(drills, (cell, from, to, change) -> {
            double before = energies.get(energies.size() - 1);
            double after = search.energy(drills);
            assertThat(after).as("seed %d, move %d", seed, energies.size()).isLessThan(before);
            assertThat(after - before).isCloseTo(change, within(1e-6 * before));
            energies.add(after);
        });
        int moved = cells.pass(0, ROWS - 1, false) + cells.pass(0, ROWS - 1, false);

        assertThat(moved).isEqualTo(energies.size() - 1).isGreaterThan(50);
        assertThat(cells.energy()).isCloseTo(search.energy(drills), within(1e-6 * cells.energy()));
    }

    /** Bands are far enough apart: the same chart comes out whatever the threads did. */
    @Test
    void comesOutTheSame_everyTime() {
        LightGrid wanted = Grids.waves(90, 120, 152, false);
        DrillColours colours = Grids.colours(20, 153);
        Shader searched = Shaders.of(Shading.SEARCHED, 0.2);
        int[] first = searched.shaded(wanted, colours);
        for (int again = 0; again < 4; again++) {
            assertThat(searched.shaded(wanted, colours)).isEqualTo(first);
        }
        assertThat(SearchedCells.APART).isLessThanOrEqualTo(Searched.BAND_ROWS);
    }

    @ParameterizedTest
    @CsvSource({"NONE", "DIFFUSED", "SCATTERED", "SEARCHED"})
    void leavesFewerStrays_whenTheyMatter(Shading shading) {
        LightGrid wanted = Grids.waves(80, 80, 154, true);
        DrillColours colours = Grids.colours(24, 155);
        long speckled = Strays.count(80, 80, Shaders.of(shading, 0).shaded(wanted, colours));
        long calmer = Strays.count(80, 80, Shaders.of(shading, 0.2).shaded(wanted, colours));
        long calm = Strays.count(80, 80, Shaders.of(shading, 1).shaded(wanted, colours));
        assertThat(speckled).isPositive();
        assertThat(calmer).isLessThan(speckled);
        assertThat(calm).isLessThanOrEqualTo(calmer).isLessThan(speckled / 2);
    }

    @Test
    void countsAsStraysWhatHasNoneOfItsKindAbout() {
        int[] drills = {
            0, 0, 1, 2,
            0, 3, 1, 2,
            4, 4, Shader.NONE, 5,
            0, 6, 7, 7
        };
        // 3, 5, 6 and the 0 below are alone
        assertThat(Strays.count(4, 4, drills)).isEqualTo(4);
    }

    @Test
    void staysAsItIs_withOneColourOrOneCell() {
        LightGrid wanted = Grids.waves(20, 20, 156, false);
        assertThat(Shaders.of(Shading.SEARCHED, 0.5).shaded(wanted, Grids.colours(1, 157)))
                .containsOnly(0);
        LightGrid one = Grids.waves(1, 1, 158, false);
        assertThat(Shaders.of(Shading.SEARCHED, 0.5).shaded(one, Grids.colours(5, 159)))
                .hasSize(1);
    }
}
