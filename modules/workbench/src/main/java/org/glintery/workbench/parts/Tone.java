package org.glintery.workbench.parts;

import java.awt.Color;
import java.util.Locale;
import javax.swing.UIManager;
import org.glintery.api.Stable;

/**
 * The colours of the theme. They follow the switch between light and dark: ask when painting, do not keep. Plain
 * components get them from the look and feel by themselves; only own painting asks here.
 */
@Stable
public enum Tone {
    /** The ground of the window. */
    PAPER("paper", 0xf7f3ea),
    /** Raised ground: cards, fields, tables. */
    SHEET("sheet", 0xfffdf8),
    INK("ink", 0x2b2926),
    /** For hints and what is second in rank; readable on every ground. */
    FAINT("faint", 0x686259),
    /** Hairlines inside a sheet. */
    LINE("line", 0xe2dac9),
    /** Outlines of what can be used. */
    EDGE("edge", 0x8f8672),
    ACCENT("accent", 0x1d6a73),
    ON_ACCENT("onAccent", 0xffffff),
    ACCENT_SOFT("accentSoft", 0xdcebe9),
    CAUTION("caution", 0x7a4f00),
    CAUTION_PAPER("cautionPaper", 0xfdf1d3),
    TROUBLE("trouble", 0x9a2c20);

    private final String key;
    private final Color usual;

    Tone(String key, int usualRgb) {
        this.key = "Glintery." + key;
        this.usual = new Color(usualRgb);
    }

    /** The colour in the look and feel of this moment. Event thread. */
    public Color colour() {
        Color themed = UIManager.getColor(key);
        return themed == null ? usual : themed;
    }

    /** The colour with an opacity from 0 to 1. */
    public Color colour(double opacity) {
        Color full = colour();
        return new Color(full.getRed(), full.getGreen(), full.getBlue(), (int) Math.round(opacity * 255));
    }

    /** Whether the ground is dark now. */
    public static boolean isDark() {
        Color ground = PAPER.colour();
        return ground.getRed() + ground.getGreen() + ground.getBlue() < 3 * 128;
    }

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
