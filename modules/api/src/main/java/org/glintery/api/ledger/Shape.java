package org.glintery.api.ledger;

import org.glintery.api.Stable;

/** The outline of a drill. */
@Stable
public enum Shape {
    ROUND,
    SQUARE,
    SPECIAL
}
