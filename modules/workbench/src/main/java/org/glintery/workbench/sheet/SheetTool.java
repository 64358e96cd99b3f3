package org.glintery.workbench.sheet;

import org.glintery.api.Preview;
import org.openide.util.NbBundle.Messages;

/** What dragging on the sheet does. */
@Preview(since = "1.0")
@Messages({
    "SheetTool.MOVE=Move the sheet",
    "SheetTool.BOX=Select a box",
    "SheetTool.LASSO=Select by a line drawn round",
    "SheetTool.COLOUR=Select all of one drill",
    "SheetTool.PATCH=Select a patch that hangs together",
    "SheetTool.BRUSH=Paint",
    "SheetTool.LAY=Mark as laid"
})
public enum SheetTool {
    MOVE,
    BOX,
    LASSO,
    COLOUR,
    PATCH,
    /** Reports each stroke as painted cells. */
    BRUSH,
    /** Reports each stroke as laid cells. */
    LAY;

    /** What a menu and a tooltip say. */
    public String words() {
        return switch (this) {
            case MOVE -> Bundle.SheetTool_MOVE();
            case BOX -> Bundle.SheetTool_BOX();
            case LASSO -> Bundle.SheetTool_LASSO();
            case COLOUR -> Bundle.SheetTool_COLOUR();
            case PATCH -> Bundle.SheetTool_PATCH();
            case BRUSH -> Bundle.SheetTool_BRUSH();
            case LAY -> Bundle.SheetTool_LAY();
        };
    }

    /** Whether it ends in a stroke that somebody else carries out. */
    boolean strokes() {
        return this == BRUSH || this == LAY;
    }
}
