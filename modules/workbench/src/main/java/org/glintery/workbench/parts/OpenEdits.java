package org.glintery.workbench.parts;

import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import java.awt.event.HierarchyEvent;
import javax.swing.JComponent;
import org.glintery.api.Preview;

/** Fields with text that is not kept yet: it is kept when their window goes, and before the application ends. */
@Preview(since = "1.0")
public final class OpenEdits {
    private static final String KEEP = OpenEdits.class.getName();

    private OpenEdits() {}

    /** Keeps a field's text when it leaves the window, and when {@link #keepAll} is called. */
    static void join(JComponent field, Runnable keep) {
        field.putClientProperty(KEEP, keep);
        field.addHierarchyListener(e -> {
            if ((e.getChangeFlags() & HierarchyEvent.DISPLAYABILITY_CHANGED) != 0 && !field.isDisplayable()) {
                keep.run();
            }
        });
    }

    /** Keeps what stands in the fields of all windows. Event thread. */
    public static void keepAll() {
        for (Window window : Window.getWindows()) {
            keepIn(window);
        }
    }

    static void keepIn(Component component) {
        if (component instanceof JComponent field && field.getClientProperty(KEEP) instanceof Runnable keep) {
            keep.run();
        }
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                keepIn(child);
            }
        }
    }
}
