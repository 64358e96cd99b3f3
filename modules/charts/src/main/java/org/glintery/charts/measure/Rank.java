package org.glintery.charts.measure;

/** Finds the value that stands at a place of a rising order, without putting all in order (Hoare, CACM 4(7):321, 1961). */
final class Rank {

    private Rank() {}

    /** @param values change their places @param place from 0 */
    static double of(double[] values, int place) {
        int from = 0;
        int to = values.length - 1;
        while (from < to) {
            double pivot = middle(values[from], values[(from + to) >>> 1], values[to]);
            int low = from;
            int high = to;
            while (low <= high) {
                while (values[low] < pivot) {
                    low++;
                }
                while (values[high] > pivot) {
                    high--;
                }
                if (low <= high) {
                    double kept = values[low];
                    values[low++] = values[high];
                    values[high--] = kept;
                }
            }
            if (place <= high) {
                to = high;
            } else if (place >= low) {
                from = low;
            } else {
                return values[place];
            }
        }
        return values[place];
    }

    private static double middle(double a, double b, double c) {
        return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    }
}
