package org.glintery.charts.shading;

import java.util.stream.IntStream;
import org.glintery.charts.picture.LightGrid;

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

    private final Shader start;
    private final EnergyWeights weights;
    private final boolean straysOnly;
    private final SearchedCells.Moves moves;

    /** @param straysOnly whether only strays are exchanged */
    Searched(Shader start, EnergyWeights weights, boolean straysOnly) {
        this(start, weights, straysOnly, (cell, from, to, change) -> {});
    }

    Searched(Shader start, EnergyWeights weights, boolean straysOnly, SearchedCells.Moves moves) {
        this.start = start;
        this.weights = weights;
        this.straysOnly = straysOnly;
        this.moves = moves;
    }

    @Override
    public int[] shaded(LightGrid wanted, DrillColours colours) {
        int[] drills = start.shaded(wanted, colours);
        LabGrid lab = LabGrid.of(wanted);
        CandidateDrills candidates = new CandidateDrills(wanted, lab, colours, MOST_CANDIDATES);
        SearchedCells cells = new SearchedCells(wanted, colours, candidates, lab, weights, drills, moves);
        int bands = (wanted.rows() + BAND_ROWS - 1) / BAND_ROWS;
        int moved = 1;
        for (int pass = 0; pass < MOST_PASSES && moved > 0; pass++) {
            moved = pass(cells, wanted.rows(), bands, 0) + pass(cells, wanted.rows(), bands, 1);
        }
        return drills;
    }

    /** Over every other band: those between keep them apart. */
    private int pass(SearchedCells cells, int rows, int bands, int first) {
        return IntStream.range(0, bands)
                .filter(band -> band % 2 == first)
                .parallel()
                .map(band -> cells.pass(band * BAND_ROWS, Math.min(rows, (band + 1) * BAND_ROWS) - 1, straysOnly))
                .sum();
    }
}
