package org.glintery.charts.shading;

import java.util.stream.IntStream;
import org.glintery.charts.picture.LightGrid;
import org.glintery.charts.viewing.FoldedGaussian;
import org.glintery.charts.viewing.Viewing;
import org.glintery.colour.DifferenceMetric;
import org.glintery.colour.LinearRgb;

/**
 * By how much a chart, seen from a distance, differs from what it should look like: the sum over all cells of the square
 * of CIEDE2000 there, in the quadratic form that holds for small differences about the wanted colour. What another drill
 * in one cell changes about the sum follows from a few numbers of its surroundings, exactly.
 *
 * <p>With e the seen error of light at each cell, M the form there and g the Gaussian, the sum is that of e' M e. A change d
 * of the light of one cell adds g d to e about it, and so changes the sum by 2 d' (sum of g M e) + d' (sum of g² M) d.
 * Not safe for several threads, unless they work on cells more than twice the reach apart.
 */
final class SeenError {

    /** Beyond 2.7 sigma a cell hardly counts. */
    static final int REACH = 4;

    private static final int FORM = 6;

    private final int columns;
    private final FoldedGaussian across;
    private final FoldedGaussian down;
    /** e of each cell: red, green, blue. */
    private final double[] error;
    /** M e of each cell. */
    private final double[] pull;

    private final double[] form;
    /** The sum of g² M about each cell. */
    private final double[][] weight = new double[FORM][];

    SeenError(LightGrid wanted, DrillColours colours, int[] drills) {
        columns = wanted.columns();
        Viewing viewing = new Viewing(columns, wanted.rows(), REACH);
        across = viewing.across();
        down = viewing.down();
        error = new double[3 * wanted.cells()];
        pull = new double[3 * wanted.cells()];
        form = forms(wanted, viewing);
        for (int entry = 0; entry < FORM; entry++) {
            double[] one = new double[wanted.cells()];
            for (int cell = 0; cell < one.length; cell++) {
                one[cell] = form[FORM * cell + entry];
            }
            weight[entry] = viewing.squaresHandedBack(one);
        }
        lay(wanted, colours, drills, viewing);
    }

    /** Blank cells have no form: nothing is to be seen there. */
    private static double[] forms(LightGrid wanted, Viewing viewing) {
        double[] red = viewing.seen(wanted.channel(0));
        double[] green = viewing.seen(wanted.channel(1));
        double[] blue = viewing.seen(wanted.channel(2));
        double[] forms = new double[FORM * wanted.cells()];
        IntStream.range(0, wanted.rows()).parallel().forEach(row -> {
            double[] one = new double[FORM];
            for (int cell = row * wanted.columns(); cell < (row + 1) * wanted.columns(); cell++) {
                if (!wanted.isBlank(cell)) {
                    DifferenceMetric.about(new LinearRgb(red[cell], green[cell], blue[cell]), one);
                    System.arraycopy(one, 0, forms, FORM * cell, FORM);
                }
            }
        });
        return forms;
    }

    private void lay(LightGrid wanted, DrillColours colours, int[] drills, Viewing viewing) {
        for (int channel = 0; channel < 3; channel++) {
            double[] off = wanted.channel(channel);
            for (int cell = 0; cell < off.length; cell++) {
                off[cell] = drills[cell] == Shader.NONE ? 0 : colours.channel(drills[cell], channel) - off[cell];
            }
            double[] seen = viewing.seen(off);
            for (int cell = 0; cell < off.length; cell++) {
                error[3 * cell + channel] = seen[cell];
            }
        }
        for (int cell = 0; cell < drills.length; cell++) {
            refreshPull(cell);
        }
    }

    private void refreshPull(int cell) {
        int m = FORM * cell;
        int at = 3 * cell;
        double red = error[at];
        double green = error[at + 1];
        double blue = error[at + 2];
        pull[at] = form[m] * red + form[m + 1] * green + form[m + 2] * blue;
        pull[at + 1] = form[m + 1] * red + form[m + 3] * green + form[m + 4] * blue;
        pull[at + 2] = form[m + 2] * red + form[m + 4] * green + form[m + 5] * blue;
    }

    /** What the surroundings of a cell ask of it: the sum of g M e. @param asked takes red, green and blue */
    void ask(int row, int column, double[] asked) {
        double[] xWeights = across.handedOut(column);
        double[] yWeights = down.handedOut(row);
        int left = across.first(column);
        int right = across.last(column);
        double red = 0;
        double green = 0;
        double blue = 0;
        for (int y = down.first(row); y <= down.last(row); y++) {
            double ofRed = 0;
            double ofGreen = 0;
            double ofBlue = 0;
            int at = 3 * (y * columns + left);
            for (int x = left; x <= right; x++, at += 3) {
                double seen = xWeights[x - column + REACH];
                ofRed += seen * pull[at];
                ofGreen += seen * pull[at + 1];
                ofBlue += seen * pull[at + 2];
            }
            double seen = yWeights[y - row + REACH];
            red += seen * ofRed;
            green += seen * ofGreen;
            blue += seen * ofBlue;
        }
        asked[0] = red;
        asked[1] = green;
        asked[2] = blue;
    }

    /** By how much the sum changes when the light of a cell changes so. @param asked what {@link #ask} gives for it */
    double change(int cell, double[] asked, double red, double green, double blue) {
        return 2 * (asked[0] * red + asked[1] * green + asked[2] * blue)
                + weight[0][cell] * red * red
                + weight[3][cell] * green * green
                + weight[5][cell] * blue * blue
                + 2 * (weight[1][cell] * red * green + weight[2][cell] * red * blue + weight[4][cell] * green * blue);
    }

    /** Changes the light of a cell. */
    void move(int row, int column, double red, double green, double blue) {
        double[] xWeights = across.handedOut(column);
        double[] yWeights = down.handedOut(row);
        for (int y = down.first(row); y <= down.last(row); y++) {
            for (int x = across.first(column); x <= across.last(column); x++) {
                double seen = yWeights[y - row + REACH] * xWeights[x - column + REACH];
                int cell = y * columns + x;
                error[3 * cell] += seen * red;
                error[3 * cell + 1] += seen * green;
                error[3 * cell + 2] += seen * blue;
                refreshPull(cell);
            }
        }
    }

    /** The sum over all cells. */
    double sum() {
        double sum = 0;
        for (int at = 0; at < error.length; at++) {
            sum += error[at] * pull[at];
        }
        return sum;
    }
}
