package org.glintery.charts.picture;

/**
 * Which pixels lie under each cell along one side of a grid, and with which share: those between the first and the last
 * weigh the same. The shares of a cell sum to 1.
 */
final class Spans {

    final int[] first;
    final int[] last;
    final double[] firstShare;
    final double[] lastShare;
    final double innerShare;

    /** @param from where in the picture the first cell begins, in pixels @param length of all cells, in pixels */
    Spans(double from, double length, int cells, int pixels) {
        first = new int[cells];
        last = new int[cells];
        firstShare = new double[cells];
        lastShare = new double[cells];
        double size = length / cells;
        innerShare = 1 / size;
        for (int cell = 0; cell < cells; cell++) {
            double start = from + cell * size;
            double end = from + (cell + 1) * size;
            first[cell] = Math.max(0, Math.min(pixels - 1, (int) Math.floor(start)));
            last[cell] = Math.max(first[cell], Math.min(pixels - 1, (int) Math.ceil(end) - 1));
            if (first[cell] == last[cell]) {
                firstShare[cell] = 1;
            } else {
                firstShare[cell] = (first[cell] + 1 - start) / size;
                lastShare[cell] = (end - last[cell]) / size;
            }
        }
    }

    /** The share of a pixel between the first and the last of its cell, or one of them. */
    double share(int cell, int pixel) {
        if (pixel == first[cell]) {
            return firstShare[cell];
        }
        return pixel == last[cell] ? lastShare[cell] : innerShare;
    }
}
