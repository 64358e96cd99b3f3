package org.glintery.workbench.menu;

import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.workbench.spi.Desk;

/** Tells a refusal the way the desk tells refused changes. Event thread. */
final class Telling {
    private Telling() {}

    static void refused(Desk desk, Refusal refusal) {
        desk.change(view -> Result.refused(refusal));
    }
}
