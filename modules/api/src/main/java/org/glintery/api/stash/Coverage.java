package org.glintery.api.stash;

import org.glintery.api.Stable;

/** How much of the canvas takes drills. */
@Stable
public enum Coverage {
    FULL,
    PARTIAL,
    NOT_SAID
}
