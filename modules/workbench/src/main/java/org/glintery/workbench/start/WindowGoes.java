package org.glintery.workbench.start;

import java.lang.reflect.InvocationTargetException;
import java.util.concurrent.Callable;
import javax.swing.SwingUtilities;
import org.glintery.workbench.parts.OpenEdits;
import org.openide.modules.OnStop;

/** Keeps what is being typed before the application ends. The platform asks on a thread of its own choice. */
@OnStop
public final class WindowGoes implements Callable<Boolean> {
    @Override
    public Boolean call() throws InvocationTargetException, InterruptedException {
        if (SwingUtilities.isEventDispatchThread()) {
            OpenEdits.keepAll();
        } else {
            SwingUtilities.invokeAndWait(OpenEdits::keepAll);
        }
        return true;
    }
}
