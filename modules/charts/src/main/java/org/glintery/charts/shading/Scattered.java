package org.glintery.charts.shading;

import org.glintery.api.charts.Watch;
import org.glintery.charts.picture.LightGrid;
import org.glintery.charts.progress.Steps;

/**
 * Dot diffusion (Knuth, ACM Trans. Graphics 6(4):245-273, 1987) in linear light over an order of blue noise, each drill
 * chosen by CIEDE2000, for what the drills can show: cells come in an order that is even everywhere and has no direction, and each hands what it could
 * not show to the neighbours that come later. So single drills lie scattered, where rows of diffusion draw worms.
 */
final class Scattered implements Shader {

    /** Some of each error is let go, so that what is handed on stays bounded. */
    private static final double HANDED_ON = 0.9;

    private static final int REACH = 2;
    private static final int ACROSS = 2 * REACH + 1;
    /** How much goes to a neighbour, by its place: a Gaussian of one cell. */
    private static final double[] WEIGHTS = weights();

    @Override
    public int[] shaded(LightGrid wanted, DrillColours colours, Watch watch) {
        Work work = new Work(new Mixable(colours).mixed(wanted), colours);
        Steps steps = new Steps(watch, BlueNoise.EDGE * BlueNoise.EDGE);
        for (int place : BlueNoise.order()) {
            if (!steps.next()) {
                break;
            }
            for (int row = place / BlueNoise.EDGE; row < wanted.rows(); row += BlueNoise.EDGE) {
                for (int column = place % BlueNoise.EDGE; column < wanted.columns(); column += BlueNoise.EDGE) {
                    work.choose(row, column);
                }
            }
        }
        steps.check();
        return work.drills;
    }

    private static double[] weights() {
        double[] weights = new double[ACROSS * ACROSS];
        for (int dy = -REACH; dy <= REACH; dy++) {
            for (int dx = -REACH; dx <= REACH; dx++) {
                weights[(dy + REACH) * ACROSS + dx + REACH] = Math.exp(-(dx * dx + dy * dy) / 2.0);
            }
        }
        return weights;
    }

    /** The cells with what earlier ones handed them. */
    private static final class Work {

        private static final int NOT_YET = -2;

        private final LightGrid wanted;
        private final DrillColours colours;
        private final int[] drills;
        private final double[] red;
        private final double[] green;
        private final double[] blue;
        private final double[] lab = new double[3];

        Work(LightGrid wanted, DrillColours colours) {
            this.wanted = wanted;
            this.colours = colours;
            int cells = wanted.cells();
            drills = new int[cells];
            red = new double[cells];
            green = new double[cells];
            blue = new double[cells];
            for (int cell = 0; cell < cells; cell++) {
                drills[cell] = wanted.isBlank(cell) ? NONE : NOT_YET;
                red[cell] = wanted.red(cell);
                green[cell] = wanted.green(cell);
                blue[cell] = wanted.blue(cell);
            }
        }

        void choose(int row, int column) {
            int cell = row * wanted.columns() + column;
            if (drills[cell] == NONE) {
                return;
            }
            LabConversion.of(shown(red[cell]), shown(green[cell]), shown(blue[cell]), lab);
            int drill = colours.nearest(lab[0], lab[1], lab[2]);
            drills[cell] = drill;
            handOn(
                    row,
                    column,
                    HANDED_ON * (red[cell] - colours.red[drill]),
                    HANDED_ON * (green[cell] - colours.green[drill]),
                    HANDED_ON * (blue[cell] - colours.blue[drill]));
        }

        private void handOn(int row, int column, double redError, double greenError, double blueError) {
            int top = Math.max(0, row - REACH);
            int bottom = Math.min(wanted.rows() - 1, row + REACH);
            int left = Math.max(0, column - REACH);
            int right = Math.min(wanted.columns() - 1, column + REACH);
            double sum = 0;
            for (int y = top; y <= bottom; y++) {
                for (int x = left; x <= right; x++) {
                    sum += drills[y * wanted.columns() + x] == NOT_YET ? weight(y - row, x - column) : 0;
                }
            }
            if (sum == 0) {
                return;
            }
            for (int y = top; y <= bottom; y++) {
                for (int x = left; x <= right; x++) {
                    int to = y * wanted.columns() + x;
                    if (drills[to] == NOT_YET) {
                        double share = weight(y - row, x - column) / sum;
                        red[to] += share * redError;
                        green[to] += share * greenError;
                        blue[to] += share * blueError;
                    }
                }
            }
        }

        private static double weight(int dy, int dx) {
            return WEIGHTS[(dy + REACH) * ACROSS + dx + REACH];
        }

        private static double shown(double light) {
            return Math.max(0, Math.min(1, light));
        }
    }
}
