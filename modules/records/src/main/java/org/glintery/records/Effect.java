package org.glintery.records;

/**
 * What one entry does to the balances of its two spots: the count goes from one to the other, the rest is
 * told for each side, because a stocktake ends uncertainty on one side only.
 */
record Effect(
        int drill,
        int from,
        int to,
        long count,
        long fromVariance,
        int fromUncounted,
        long toVariance,
        int toUncounted) {

    /** The same with the spots exchanged and everything taken back. */
    Effect inverse() {
        return new Effect(
                drill,
                to,
                from,
                count,
                Math.negateExact(toVariance),
                Math.negateExact(toUncounted),
                Math.negateExact(fromVariance),
                Math.negateExact(fromUncounted));
    }
}
