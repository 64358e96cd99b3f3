package org.glintery.demo;

import java.util.List;

/** The nine unequal sections of the club's relay, in seven months; the sixth was rested. */
final class Relay {
    /** Evenings spent at each section so far, in the order of the relay; the ninth has only been begun. */
    static final List<Integer> EVENINGS = List.of(4, 6, 3, 7, 4, 0, 6, 5, 2);

    private static final int RESTED = 5;
    private static final int BEGUN = 8;
    private static final double[] ACROSS = {0.30, 0.72};
    private static final double[] DOWN = {0.26, 0.68};

    private Relay() {}

    static boolean done(int section) {
        return section != RESTED && section != BEGUN;
    }

    static double share() {
        return (EVENINGS.size() - 2.0) / EVENINGS.size();
    }

    /** Whether a place of the canvas, 0 to 1 from the top left, lies in a section that is done; the first is at the bottom left. */
    static boolean laidAt(double x, double y) {
        return done((2 - third(DOWN, y)) * 3 + third(ACROSS, x));
    }

    private static int third(double[] borders, double at) {
        return at < borders[0] ? 0 : at < borders[1] ? 1 : 2;
    }
}
