package org.glintery.workbench.start;

import java.util.Optional;
import org.glintery.workbench.desk.CurrentDesk;
import org.glintery.workbench.desk.WorkshopDesk;
import org.openide.modules.OnStop;

/** Closes the workshop when the application ends, and waits for one that was closed just before. */
@OnStop
public final class WindowGone implements Runnable {
    @Override
    public void run() {
        CurrentDesk.get().take(Optional.empty()).ifPresent(WorkshopDesk::close);
        Opening.awaitClosings();
    }
}
