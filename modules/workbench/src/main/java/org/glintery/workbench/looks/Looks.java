package org.glintery.workbench.looks;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Font;
import java.awt.Window;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import javax.swing.UnsupportedLookAndFeelException;
import org.openide.util.NbPreferences;

/** Switches between light and dark and between text sizes while the window is open, and remembers. Event thread. */
public final class Looks {
    private static final Logger LOG = Logger.getLogger(Looks.class.getName());
    private static final String TEXT_SIZE = "textSize";
    private static final int[] SIZES = {12, 13, 15, 17, 20, 24};
    private static final int USUAL = 1;

    private Looks() {}

    public static boolean isDark() {
        return FlatLaf.isLafDark();
    }

    public static void setDark(boolean dark) {
        FlatLaf wanted = dark ? new FlatDarkLaf() : new FlatLightLaf();
        try {
            UIManager.setLookAndFeel(wanted);
        } catch (UnsupportedLookAndFeelException e) {
            LOG.log(Level.WARNING, "The look can't be changed", e);
            return;
        }
        // where the platform reads it at the next start
        NbPreferences.root().node("laf").put("laf", wanted.getClass().getName());
        applySize();
        updateAll();
    }

    /** One step larger or smaller. */
    public static void grow(int steps) {
        int step = Math.max(0, Math.min(SIZES.length - 1, step() + steps));
        NbPreferences.forModule(Looks.class).putInt(TEXT_SIZE, step);
        applySize();
        updateAll();
    }

    /** Puts the remembered text size in place, when the window comes up. */
    public static void restore() {
        if (step() != USUAL) {
            applySize();
            updateAll();
        }
    }

    private static int step() {
        return Math.max(
                0,
                Math.min(SIZES.length - 1, NbPreferences.forModule(Looks.class).getInt(TEXT_SIZE, USUAL)));
    }

    private static void applySize() {
        if (step() == USUAL) {
            UIManager.put("defaultFont", null);
        } else {
            Font usual = UIManager.getFont("Label.font");
            UIManager.put("defaultFont", usual.deriveFont((float) SIZES[step()]));
        }
    }

    private static void updateAll() {
        for (Window window : Window.getWindows()) {
            SwingUtilities.updateComponentTreeUI(window);
        }
    }
}
