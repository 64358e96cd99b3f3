package org.glintery.workbench.sheet;

import org.glintery.api.Preview;

/**
 * How the cells are drawn. Immutable; any thread.
 *
 * @param symbols printed symbols as on the canvas instead of drills
 * @param sight whose eyes the colours are shown for
 */
@Preview(since = "1.0")
public record SheetStyle(boolean symbols, Sight sight) {
    /** Drills as most people see them. */
    public static final SheetStyle DRILLS = new SheetStyle(false, Sight.USUAL);

    /** Printed symbols as most people see them. */
    public static final SheetStyle SYMBOLS = new SheetStyle(true, Sight.USUAL);
}
