package org.glintery.planning.clearing;

/**
 * What it has cost so far to decide a link, for a whole link's worth of change: where that was much on both sides, it is
 * best to branch next.
 */
final class PseudoCosts {

    private static final double LEAST = 1e-4;

    private final double[][] sum;
    private final int[][] count;
    private final double[] allSum = {1, 1};
    private final int[] allCount = {1, 1};

    PseudoCosts(int links) {
        sum = new double[2][links];
        count = new int[2][links];
    }

    /**
     * @param side 0 for closed, 1 for open
     * @param change how far the link was from there
     * @param rise of the bound
     */
    void learn(int link, int side, double change, double rise) {
        double each = Math.max(0, rise) / Math.max(change, 0.01);
        sum[side][link] += each;
        count[side][link]++;
        allSum[side] += each;
        allCount[side]++;
    }

    double promise(int link, double usage) {
        return Math.max(LEAST, usage * expected(link, 0)) * Math.max(LEAST, (1 - usage) * expected(link, 1));
    }

    private double expected(int link, int side) {
        return count[side][link] > 0 ? sum[side][link] / count[side][link] : allSum[side] / allCount[side];
    }
}
