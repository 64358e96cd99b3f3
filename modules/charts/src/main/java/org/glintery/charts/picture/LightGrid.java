package org.glintery.charts.picture;

import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import org.glintery.colour.LinearRgb;

/**
 * What a grid of cells should look like: linear light in the primaries of sRGB by cell, row after row. Where nothing is to
 * be seen, such as in transparent parts, a cell is blank and its light means nothing. Not changed once it is handed out; any thread.
 */
public final class LightGrid {

    /** A cell is blank when less of it than this is opaque. */
    private static final double LEAST_OPAQUE = 0.5;

    private final int columns;
    private final int rows;
    private final double[] red;
    private final double[] green;
    private final double[] blue;
    private final boolean[] blank;

    LightGrid(int columns, int rows) {
        this(
                columns,
                rows,
                new double[columns * rows],
                new double[columns * rows],
                new double[columns * rows],
                new boolean[columns * rows]);
    }

    private LightGrid(int columns, int rows, double[] red, double[] green, double[] blue, boolean[] blank) {
        this.columns = columns;
        this.rows = rows;
        this.red = red;
        this.green = green;
        this.blue = blue;
        this.blank = blank;
    }

    /** By channels of light, which become the grid's own. @param blank which cells are blank */
    public static LightGrid of(int columns, int rows, double[][] light, IntPredicate blank) {
        return new LightGrid(columns, rows, light[0], light[1], light[2], new boolean[columns * rows]).without(blank);
    }

    /** By the light of each cell; an empty one is blank. */
    public static LightGrid of(int columns, int rows, IntFunction<Optional<LinearRgb>> light) {
        LightGrid grid = new LightGrid(columns, rows);
        for (int cell = 0; cell < grid.cells(); cell++) {
            Optional<LinearRgb> one = light.apply(cell);
            grid.blank[cell] = one.isEmpty();
            if (one.isPresent()) {
                grid.set(cell, one.get().red(), one.get().green(), one.get().blue());
            }
        }
        return grid;
    }

    /** The same, with those cells blank as well. */
    public LightGrid without(IntPredicate cells) {
        boolean[] more = blank.clone();
        for (int cell = 0; cell < more.length; cell++) {
            more[cell] |= cells.test(cell);
        }
        return new LightGrid(columns, rows, red, green, blue, more);
    }

    public int columns() {
        return columns;
    }

    public int rows() {
        return rows;
    }

    public int cells() {
        return red.length;
    }

    public double red(int cell) {
        return red[cell];
    }

    public double green(int cell) {
        return green[cell];
    }

    public double blue(int cell) {
        return blue[cell];
    }

    /** A copy of the red, green or blue light of all cells. @param channel 0 to 2 */
    public double[] channel(int channel) {
        return (channel == 0 ? red : channel == 1 ? green : blue).clone();
    }

    public boolean isBlank(int cell) {
        return blank[cell];
    }

    private void set(int cell, double r, double g, double b) {
        red[cell] = r;
        green[cell] = g;
        blue[cell] = b;
    }

    void setRow(int row, LightSums sums) {
        for (int column = 0; column < columns; column++) {
            int cell = row * columns + column;
            double opaque = sums.opaque[column];
            blank[cell] = opaque < LEAST_OPAQUE;
            if (!blank[cell]) {
                set(cell, sums.red[column] / opaque, sums.green[column] / opaque, sums.blue[column] / opaque);
            }
        }
    }

    void toSrgb(ColourProfile profile) {
        if (profile != ColourProfile.SRGB) {
            profile.toSrgb(red, green, blue);
        }
    }

    /** This grid, which lies as in the file, as it is shown. */
    LightGrid shown(Lie lie) {
        LightGrid shown = new LightGrid(lie.swapped() ? rows : columns, lie.swapped() ? columns : rows);
        for (int y = 0; y < shown.rows; y++) {
            for (int x = 0; x < shown.columns; x++) {
                int across = lie.swapped() ? y : x;
                int down = lie.swapped() ? x : y;
                int from = (lie.flippedDown() ? rows - 1 - down : down) * columns
                        + (lie.flippedAcross() ? columns - 1 - across : across);
                int to = y * shown.columns + x;
                shown.set(to, red[from], green[from], blue[from]);
                shown.blank[to] = blank[from];
            }
        }
        return shown;
    }
}
