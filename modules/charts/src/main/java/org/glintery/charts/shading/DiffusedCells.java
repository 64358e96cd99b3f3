package org.glintery.charts.shading;

import org.glintery.charts.picture.LightGrid;

/** The cells of a grid while errors are handed on between them. */
final class DiffusedCells {

    /** Some of each error is let go, so that what is handed on stays bounded. */
    private static final double HANDED_ON = 0.95;

    /**
     * How much of what was handed to a cell counts when its drill is chosen. The rest goes on to the next ones, so that a
     * drill stays nearer to its own cell's colour and nothing is lost.
     */
    private static final double HEEDED = 0.7;

    private static final double RIGHT = 7 / 16.0;
    private static final double BELOW_LEFT = 3 / 16.0;
    private static final double BELOW = 5 / 16.0;
    private static final double BELOW_RIGHT = 1 / 16.0;

    private final LightGrid wanted;
    private final DrillColours colours;
    private final int columns;
    private final int[] drills;
    private final double[] redError;
    private final double[] greenError;
    private final double[] blueError;

    DiffusedCells(LightGrid wanted, DrillColours colours) {
        this.wanted = wanted;
        this.colours = colours;
        columns = wanted.columns();
        drills = new int[wanted.cells()];
        redError = new double[wanted.cells()];
        greenError = new double[wanted.cells()];
        blueError = new double[wanted.cells()];
    }

    int[] drills() {
        return drills;
    }

    /** Chooses the drill of a cell once those before and above it have theirs. @param lab to work in */
    void choose(int row, int column, double[] lab) {
        int cell = row * columns + column;
        if (wanted.isBlank(cell)) {
            drills[cell] = Shader.NONE;
            return;
        }
        double redHanded = handedOn(redError, row, column);
        double greenHanded = handedOn(greenError, row, column);
        double blueHanded = handedOn(blueError, row, column);
        LabConversion.of(
                shown(wanted.red(cell) + HEEDED * redHanded),
                shown(wanted.green(cell) + HEEDED * greenHanded),
                shown(wanted.blue(cell) + HEEDED * blueHanded),
                lab);
        int drill = colours.nearest(lab[0], lab[1], lab[2]);
        drills[cell] = drill;
        redError[cell] = HANDED_ON * (wanted.red(cell) + redHanded - colours.red[drill]);
        greenError[cell] = HANDED_ON * (wanted.green(cell) + greenHanded - colours.green[drill]);
        blueError[cell] = HANDED_ON * (wanted.blue(cell) + blueHanded - colours.blue[drill]);
    }

    private double handedOn(double[] errors, int row, int column) {
        int cell = row * columns + column;
        double sum = column > 0 ? RIGHT * errors[cell - 1] : 0;
        if (row > 0) {
            int above = cell - columns;
            sum += BELOW * errors[above];
            sum += column > 0 ? BELOW_RIGHT * errors[above - 1] : 0;
            sum += column < columns - 1 ? BELOW_LEFT * errors[above + 1] : 0;
        }
        return sum;
    }

    private static double shown(double light) {
        return Math.max(0, Math.min(1, light));
    }
}
