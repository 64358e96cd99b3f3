package org.glintery.workbench.shelves;

import java.util.UUID;

/** Where a new piece comes from. */
sealed interface Origin {

    /** A kit that is shelved with it. */
    record NewKit() implements Origin {}

    /** A kit that is in the workshop already. */
    record OfKit(UUID kit) implements Origin {}

    /** A picture of one's own: no kit. */
    record Own() implements Origin {}
}
