package org.glintery.planning.clearing;

/** What a search is after, with the best plan so far. */
interface Aim {

    /** Branches whose bound is this or more are cut off. */
    long goal();

    /** Takes a plan if it is better. */
    void consider(int[] flow);
}
