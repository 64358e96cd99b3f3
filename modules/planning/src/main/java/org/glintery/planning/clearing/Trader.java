package org.glintery.planning.clearing;

import org.glintery.api.Preview;

/**
 * One who takes part in a round, and how uneven it may end for them. Nobody gives without getting anything, whatever the
 * difference allowed, unless they say they may.
 *
 * @param mayGiveMore by how many packets they may at most give more than they get
 * @param mayGetMore by how many packets they may at most get more than they give
 * @param mayGiveForNothing whether they also give when they get nothing at all
 */
@Preview(since = "1.0")
public record Trader(int mayGiveMore, int mayGetMore, boolean mayGiveForNothing) {

    /** @throws IllegalArgumentException for a negative difference */
    public Trader {
        if (mayGiveMore < 0 || mayGetMore < 0) {
            throw new IllegalArgumentException("a difference below 0");
        }
    }

    /** One whose given and received packets differ by at most so many either way. */
    public static Trader within(int packets) {
        return new Trader(packets, packets, false);
    }

    /** One who gives whatever is wanted, but takes at most so many packets more than they give. */
    public static Trader generous(int packets) {
        return new Trader(Integer.MAX_VALUE, packets, true);
    }
}
