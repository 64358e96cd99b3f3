package org.glintery.benchmarks;

import java.util.List;

/** What lies in the middle, and near the end, of what was measured. */
final class Median {

    private Median() {}

    static double of(List<Double> measured) {
        return quantile(measured, 0.5);
    }

    /** The least value that at least this share of all do not exceed (nearest rank). */
    static double quantile(List<Double> measured, double share) {
        List<Double> sorted = measured.stream().sorted().toList();
        return sorted.get(Math.max(0, (int) Math.ceil(share * sorted.size()) - 1));
    }
}
