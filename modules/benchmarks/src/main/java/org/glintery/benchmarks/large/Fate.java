package org.glintery.benchmarks.large;

import java.util.SplittableRandom;

/** What becomes of a piece. */
enum Fate {
    HOPED_FOR,
    ORDERED,
    SHELVED,
    ON_THE_BENCH,
    RESTING,
    MADE;

    /** Most pieces of a long life are made; few are worked at. */
    static Fate of(SplittableRandom random) {
        int percent = random.nextInt(1000);
        if (percent < 50) {
            return HOPED_FOR;
        }
        if (percent < 65) {
            return ORDERED;
        }
        if (percent < 300) {
            return SHELVED;
        }
        if (percent < 303) {
            return ON_THE_BENCH;
        }
        return percent < 330 ? RESTING : MADE;
    }

    boolean isWorked() {
        return this == ON_THE_BENCH || this == RESTING || this == MADE;
    }
}
