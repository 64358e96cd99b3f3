package org.glintery.charts.viewing;

/**
 * A Gaussian along one side of a grid whose edges mirror what lies inside: what would fall outside falls back on the cells
 * near the edge. The weights that a cell gathers sum to 1.
 */
public final class FoldedGaussian {

    /** How many cells it reaches to each side. */
    public final int reach;

    private final double[][] weights;
    /** The same weights by the cell that is seen. */
    private final double[][] handedOut;

    /**
     * @param cells along this side
     * @param sigma in cells
     * @param reach in cells; what lies beyond is left out
     */
    public FoldedGaussian(int cells, double sigma, int reach) {
        this.reach = reach;
        double[] bell = new double[2 * reach + 1];
        double sum = 0;
        for (int d = -reach; d <= reach; d++) {
            bell[d + reach] = Math.exp(-d * d / (2 * sigma * sigma));
            sum += bell[d + reach];
        }
        weights = new double[cells][2 * reach + 1];
        for (int at = 0; at < cells; at++) {
            for (int d = -reach; d <= reach; d++) {
                int from = mirrored(at + d, cells);
                weights[at][from - at + reach] += bell[d + reach] / sum;
            }
        }
        handedOut = new double[cells][2 * reach + 1];
        for (int at = 0; at < cells; at++) {
            for (int of = first(at); of <= last(at); of++) {
                handedOut[of][at - of + reach] = weight(at, of);
            }
        }
    }

    private static int mirrored(int at, int cells) {
        int turned = Math.floorMod(at, 2 * cells);
        return turned < cells ? turned : 2 * cells - 1 - turned;
    }

    public int cells() {
        return weights.length;
    }

    /** How much a cell sees of another; the other must not lie farther away than the reach. */
    public double weight(int at, int of) {
        return weights[at][of - at + reach];
    }

    /** How much the cells from {@code of - reach} on see of a cell. */
    public double[] handedOut(int of) {
        return handedOut[of];
    }

    public int first(int at) {
        return Math.max(0, at - reach);
    }

    public int last(int at) {
        return Math.min(weights.length - 1, at + reach);
    }
}
