package org.glintery.workbench.sheet;

import org.glintery.api.Preview;
import org.glintery.workbench.parts.DrillLook;

/**
 * How one line of a legend looks on the sheet. Immutable; any thread.
 *
 * @param symbol what is printed for it; empty when it has none
 */
@Preview(since = "1.0")
public record LineLook(DrillLook drill, String symbol) {}
