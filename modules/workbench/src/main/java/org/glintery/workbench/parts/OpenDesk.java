package org.glintery.workbench.parts;

import java.util.Optional;
import java.util.function.Consumer;
import org.glintery.api.Stable;
import org.glintery.api.workshop.Workshop.Registration;
import org.glintery.workbench.found.Found;
import org.glintery.workbench.spi.Desk;

/** The desk of the workshop that is open in the window, if one is. */
@Stable
public interface OpenDesk {

    /** Any thread. */
    Optional<Desk> current();

    /** Calls back on the event thread when a workshop was opened or closed. Not called for the state of this moment. */
    Registration listen(Consumer<Optional<Desk>> listener);

    /** The one of this application. */
    static OpenDesk get() {
        return Found.one(OpenDesk.class);
    }
}
