package org.glintery.workbench.sheet;

import java.util.BitSet;
import org.glintery.api.Preview;

/** Hears what somebody does on a sheet. Event thread. */
@Preview(since = "1.0")
public interface SheetListener {

    /** Other cells are selected now. */
    void selected(BitSet cells);

    /** A stroke was drawn with a tool that paints or marks; the sheet itself is not changed by it. */
    void stroked(SheetTool tool, BitSet cells);
}
