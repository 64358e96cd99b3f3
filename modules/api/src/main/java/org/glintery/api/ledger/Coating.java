package org.glintery.api.ledger;

import org.glintery.api.Stable;

/** What is on the face of a drill. AB is aurora borealis. */
@Stable
public enum Coating {
    NONE,
    AB,
    METALLIC,
    PEARL,
    GLITTER,
    MATT
}
