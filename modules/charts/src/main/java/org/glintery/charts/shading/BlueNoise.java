package org.glintery.charts.shading;

import java.util.SplittableRandom;

/**
 * An order of the cells of a square tile in which those that come early, up to any point, lie evenly and without a
 * pattern: blue noise, made by the void-and-cluster method (Ulichney, Proc. SPIE 1913:332-343, 1993). The tile continues
 * itself on all sides.
 */
final class BlueNoise {

    static final int EDGE = 64;

    private static final int CELLS = EDGE * EDGE;
    private static final long SEED = 1993;
    private static final double SIGMA = 1.9;
    private static final int REACH = 8;

    private final double[] kernel = kernel();
    private final double[] crowding = new double[CELLS];
    private final boolean[] taken = new boolean[CELLS];

    private BlueNoise() {}

    /** The cells of the tile, row after row of it, in their order. Made when first asked for. */
    static int[] order() {
        return Tile.ORDER;
    }

    private static final class Tile {
        private static final int[] ORDER = new BlueNoise().ordered();
    }

    private int[] ordered() {
        int[] order = new int[CELLS];
        int evenly = scatterEvenly();
        boolean[] start = taken.clone();
        double[] startCrowding = crowding.clone();
        for (int place = evenly - 1; place >= 0; place--) {
            order[place] = mostCrowded();
            set(order[place], false);
        }
        System.arraycopy(start, 0, taken, 0, CELLS);
        System.arraycopy(startCrowding, 0, crowding, 0, CELLS);
        for (int place = evenly; place < CELLS; place++) {
            order[place] = mostEmpty();
            set(order[place], true);
        }
        return order;
    }

    /** Takes a tenth of the cells at random and moves those in the thick of it to where it is empty, as long as that helps. */
    private int scatterEvenly() {
        SplittableRandom random = new SplittableRandom(SEED);
        int count = 0;
        while (count < CELLS / 10) {
            int cell = random.nextInt(CELLS);
            if (!taken[cell]) {
                set(cell, true);
                count++;
            }
        }
        int from;
        int to;
        do {
            from = mostCrowded();
            set(from, false);
            to = mostEmpty();
            set(to, true);
        } while (from != to);
        return count;
    }

    private void set(int cell, boolean take) {
        taken[cell] = take;
        double sign = take ? 1 : -1;
        int x = cell % EDGE;
        int y = cell / EDGE;
        for (int dy = -REACH; dy <= REACH; dy++) {
            int row = Math.floorMod(y + dy, EDGE) * EDGE;
            for (int dx = -REACH; dx <= REACH; dx++) {
                crowding[row + Math.floorMod(x + dx, EDGE)] +=
                        sign * kernel[(dy + REACH) * (2 * REACH + 1) + dx + REACH];
            }
        }
    }

    private static double[] kernel() {
        double[] kernel = new double[(2 * REACH + 1) * (2 * REACH + 1)];
        for (int dy = -REACH; dy <= REACH; dy++) {
            for (int dx = -REACH; dx <= REACH; dx++) {
                kernel[(dy + REACH) * (2 * REACH + 1) + dx + REACH] =
                        Math.exp(-(dx * dx + dy * dy) / (2 * SIGMA * SIGMA));
            }
        }
        return kernel;
    }

    private int mostCrowded() {
        int most = -1;
        for (int cell = 0; cell < CELLS; cell++) {
            if (taken[cell] && (most < 0 || crowding[cell] > crowding[most])) {
                most = cell;
            }
        }
        return most;
    }

    private int mostEmpty() {
        int most = -1;
        for (int cell = 0; cell < CELLS; cell++) {
            if (!taken[cell] && (most < 0 || crowding[cell] < crowding[most])) {
                most = cell;
            }
        }
        return most;
    }
}
