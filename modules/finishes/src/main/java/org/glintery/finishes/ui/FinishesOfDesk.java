package org.glintery.finishes.ui;

import org.glintery.api.GlinteryException;
import org.glintery.api.finishes.Finishes;
import org.glintery.workbench.spi.Desk;

/** The finishes of the workshop on the desk. */
final class FinishesOfDesk {

    private FinishesOfDesk() {}

    static Finishes of(Desk desk) {
        return desk.workshop()
                .find(Finishes.class)
                .orElseThrow(() -> new GlinteryException("the finishes bring this screen but not their service"));
    }
}
