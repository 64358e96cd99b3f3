package org.glintery.charts.shading;

import java.util.Optional;

/** How many drills of each colour are still there to be laid. Not safe for several threads, unless there is no limit. */
final class DrillsLeft {

    static final DrillsLeft NO_LIMIT = new DrillsLeft(Optional.empty());

    private final Optional<int[]> left;

    private DrillsLeft(Optional<int[]> left) {
        this.left = left;
    }

    /** Of the counts in the house, when some are laid already. */
    static DrillsLeft of(int[] counts, int[] drills) {
        int[] left = counts.clone();
        for (int drill : drills) {
            if (drill != Shader.NONE) {
                left[drill]--;
            }
        }
        return new DrillsLeft(Optional.of(left));
    }

    boolean isLimited() {
        return left.isPresent();
    }

    boolean has(int drill) {
        return left.isEmpty() || left.get()[drill] > 0;
    }

    /** Lays one in the place of another. */
    void exchange(int from, int to) {
        left.ifPresent(counts -> {
            counts[from]++;
            counts[to]--;
        });
    }
}
