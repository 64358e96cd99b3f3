package org.glintery.api.stash;

import org.glintery.api.Stable;

/** Where a piece is in its life. */
@Stable
public enum Standing {
    HOPED_FOR,
    ORDERED,
    SHELVED,
    ON_THE_BENCH,
    RESTING,
    MADE,
    LET_GO
}
