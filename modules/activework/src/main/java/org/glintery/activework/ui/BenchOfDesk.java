package org.glintery.activework.ui;

import org.glintery.api.GlinteryException;
import org.glintery.api.activework.ActiveWork;
import org.glintery.workbench.spi.Desk;

/** The bench of the workshop on the desk. */
final class BenchOfDesk {

    private BenchOfDesk() {}

    static ActiveWork of(Desk desk) {
        return desk.workshop()
                .find(ActiveWork.class)
                .orElseThrow(() -> new GlinteryException("the bench brings this screen but not its service"));
    }
}
