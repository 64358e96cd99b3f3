package org.glintery.workbench.copies;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.swing.SwingUtilities;
import org.glintery.api.workshop.Workshop.Registration;

/** Tells those who show it that a copy was made or failed, or that another folder is copied into. Any thread. */
public final class CopyNews {
    private static final List<Runnable> LISTENERS = new CopyOnWriteArrayList<>();

    private CopyNews() {}

    /** Calls back on the event thread until it is closed. */
    public static Registration listen(Runnable listener) {
        LISTENERS.add(listener);
        return () -> LISTENERS.remove(listener);
    }

    public static void tell() {
        SwingUtilities.invokeLater(() -> LISTENERS.forEach(Runnable::run));
    }
}
