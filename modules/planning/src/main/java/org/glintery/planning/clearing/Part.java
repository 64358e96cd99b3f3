package org.glintery.planning.clearing;

/** How a trader takes part in a branch of the search. */
enum Part {
    /** As the round says. */
    OPEN,
    /** Gives nothing, may get something. */
    GIVES_NOTHING,
    /** Gets at least one packet. */
    GETS_SOMETHING
}
