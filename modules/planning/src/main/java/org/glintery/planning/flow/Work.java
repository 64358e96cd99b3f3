package org.glintery.planning.flow;

/**
 * How much work may still be done, counted in looks at an arc, a node or a number rather than in time, so that the same
 * input comes out alike on a fast and on a slow machine. Not safe for use by several threads.
 */
public final class Work {

    private long left;

    public Work(long looks) {
        left = looks;
    }

    public static Work unlimited() {
        return new Work(Long.MAX_VALUE);
    }

    public void spend(long looks) {
        left -= looks;
    }

    public boolean isSpent() {
        return left <= 0;
    }

    /** A part of what is left, to be spent apart. */
    public Work share(double part) {
        long looks = Math.max(0, (long) (left * part));
        left -= looks;
        return new Work(looks);
    }

    /** Takes back what a part did not need. */
    public void takeBack(Work rest) {
        left += Math.max(0, rest.left);
        rest.left = 0;
    }
}
