package org.glintery.charts.shading;

/**
 * What a chart's faults weigh against each other. The energy of a chart is the sum over its cells of viewing times the
 * square of CIEDE2000 as seen from a distance, cell times the square of CIEDE2000 of the cell by itself, and stray for each
 * cell that is a stray.
 */
record EnergyWeights(double viewing, double cell, double stray) {

    /**
     * The eye forgives a single drill what the whole makes good: of 25 to 1 in squares, a cell that is off by five counts
     * as much as an area that is off by one.
     */
    private static final double CELL = 0.04;

    /** At full calm a stray counts as much as an area that is off by six. */
    private static final double STRAY = 36;

    /** Without shading: as much as a cell that is off by fourteen. */
    private static final double CELL_STRAY = 200;

    /** @param strays from 0, strays are no matter, to 1, calm */
    static EnergyWeights seen(double strays) {
        return new EnergyWeights(1, CELL, STRAY * strays);
    }

    /** Each cell by itself, as without shading. */
    static EnergyWeights cells(double strays) {
        return new EnergyWeights(0, 1, CELL_STRAY * strays);
    }
}
