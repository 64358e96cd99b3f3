package org.glintery.workbench.parts;

import com.formdev.flatlaf.util.UIScale;
import javax.swing.BorderFactory;
import javax.swing.border.Border;
import org.glintery.api.Stable;

/** The distances of the screens, in pixels at the usual text size. */
@Stable
public final class Space {
    public static final int HAIR = 2;
    public static final int TIGHT = 4;
    public static final int NEAR = 8;
    public static final int APART = 14;
    public static final int SECTION = 24;
    public static final int PAGE = 32;

    /** The longest line of text that reads well. */
    public static final int READING_WIDTH = 620;

    private Space() {}

    /** A distance grown with the text size. */
    public static int px(int atUsualSize) {
        return UIScale.scale(atUsualSize);
    }

    /** Empty room on all four sides. */
    public static Border around(int atUsualSize) {
        int px = px(atUsualSize);
        return BorderFactory.createEmptyBorder(px, px, px, px);
    }
}
