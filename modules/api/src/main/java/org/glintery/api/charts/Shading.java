package org.glintery.api.charts;

import org.glintery.api.Stable;

/** How drills of few colours stand for many. */
@Stable
public enum Shading {
    /** Each cell its nearest drill. */
    NONE,
    /** What a cell can't show is handed on to its neighbours, row by row. */
    DIFFUSED,
    /** The same in an even order without direction, so that single drills lie scattered. */
    SCATTERED,
    /** Bettered drill by drill for how the whole looks from a distance. */
    SEARCHED
}
