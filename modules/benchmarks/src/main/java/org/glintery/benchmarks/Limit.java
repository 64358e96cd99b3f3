package org.glintery.benchmarks;

/** What a figure has to keep to. */
record Limit(Side side, double bound) {

    /** On which side of the bound a figure has to be. */
    enum Side {
        AT_MOST("at most"),
        AT_LEAST("at least");

        private final String words;

        Side(String words) {
            this.words = words;
        }
    }

    static Limit atMost(double bound) {
        return new Limit(Side.AT_MOST, bound);
    }

    static Limit atLeast(double bound) {
        return new Limit(Side.AT_LEAST, bound);
    }

    boolean isMet(double value) {
        return side == Side.AT_MOST ? value <= bound : value >= bound;
    }

    String words(Unit unit) {
        return side.words + " " + unit.words(bound);
    }
}
