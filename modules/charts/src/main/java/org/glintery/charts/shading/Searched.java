package org.glintery.charts.shading;

import java.util.Optional;
import java.util.stream.IntStream;
import org.glintery.api.charts.Watch;
import org.glintery.charts.picture.LightGrid;
import org.glintery.charts.progress.PartOfWatch;
import org.glintery.charts.progress.Steps;

/**
 * Goes from one shading to a better chart by moves of single drills, each of which provably lowers the energy: viewing
 * error, cell error and strays. For viewing error alone this is direct binary search (Analoui and Allebach, Proc. SPIE
 * 1666:96-108, 1992), here with many colours and CIEDE2000.
 */
final class Searched implements Shader {

    /** Bands of this many rows are worked on side by side, every other one at a time. */
    static final int BAND_ROWS = 16;

    private static final int MOST_CANDIDATES = 24;
    private static final int MOST_PASSES = 40;

    /** Which share of the work the start is. */
    private static final double BEGUN = 0.2;

    private final Shader start;
    private final EnergyWeights weights;
    private final boolean straysOnly;
    private final Optional<int[]> counts;
    private final SearchedCells.Moves moves;

    /** @param straysOnly whether only strays are exchanged */
    Searched(Shader start, EnergyWeights weights, boolean straysOnly) {
        this(start, weights, straysOnly, Optional.empty());
    }

    /** @param counts by colour how many drills are there, which the start keeps to; empty for as many as are wanted */
    Searched(Shader start, EnergyWeights weights, boolean straysOnly, Optional<int[]> counts) {
        this.start = start;
        this.weights = weights;
        this.straysOnly = straysOnly;
        this.counts = counts;
        moves = (cell, from, to, change) -> {};
    }

    @Override
    public int[] shaded(LightGrid wanted, DrillColours colours, Watch watch) {
        int[] drills = start.shaded(wanted, colours, new PartOfWatch(watch, 0, BEGUN));
        LabGrid lab = LabGrid.of(wanted);
        CandidateDrills candidates = new CandidateDrills(wanted, lab, colours, MOST_CANDIDATES);
        SearchedCells cells = new SearchedCells(wanted, colours, candidates, lab, weights, drills, moves, left(drills));
        int bands = (wanted.rows() + BAND_ROWS - 1) / BAND_ROWS;
        int moved = 1;
        double from = BEGUN;
        for (int pass = 0; pass < MOST_PASSES && moved > 0; pass++) {
            // a pass does about half of what is left to do
            double to = (from + 1) / 2;
            Steps steps = new Steps(new PartOfWatch(watch, from, to), bands);
            moved = pass(cells, wanted.rows(), bands, 0, steps) + pass(cells, wanted.rows(), bands, 1, steps);
            steps.check();
            from = to;
        }
        return drills;
    }

    private DrillsLeft left(int[] drills) {
        return counts.map(there -> DrillsLeft.of(there, drills)).orElse(DrillsLeft.NO_LIMIT);
    }

    /** Over every other band: those between keep them apart. Drills that are counted are laid in one order only. */
    private int pass(SearchedCells cells, int rows, int bands, int first, Steps steps) {
        IntStream every = IntStream.range(0, bands).filter(band -> band % 2 == first);
        return (counts.isPresent() ? every : every.parallel())
                .filter(band -> steps.next())
                .map(band -> cells.pass(band * BAND_ROWS, Math.min(rows, (band + 1) * BAND_ROWS) - 1, straysOnly))
                .sum();
    }
}
