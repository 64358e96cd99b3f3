package org.glintery.planning.clearing;

import org.glintery.api.Preview;

/**
 * How long a clearing may go on looking for fewer parcels, counted in looks rather than in time, so that a round comes out
 * alike on a fast and on a slow machine. The wants that can be met are found in any case.
 *
 * @param looks at numbers and arcs; some hundreds of millions take a second
 */
@Preview(since = "1.0")
public record Patience(long looks) {

    /** Some ten seconds for rounds that are not proven before. */
    public static final Patience USUAL = new Patience(1_500_000_000L);

    /** A blink. */
    public static final Patience SHORT = new Patience(100_000_000L);

    /** @throws IllegalArgumentException when negative */
    public Patience {
        if (looks < 0) {
            throw new IllegalArgumentException("looks: " + looks);
        }
    }
}
