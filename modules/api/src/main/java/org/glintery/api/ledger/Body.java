package org.glintery.api.ledger;

import org.glintery.api.Stable;

/** What a drill is made of. */
@Stable
public enum Body {
    RESIN,
    CRYSTAL,
    TRANSLUCENT,
    GLOW
}
