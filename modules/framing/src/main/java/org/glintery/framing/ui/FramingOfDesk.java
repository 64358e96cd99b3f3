package org.glintery.framing.ui;

import org.glintery.api.GlinteryException;
import org.glintery.api.framing.Framing;
import org.glintery.workbench.spi.Desk;

/** Framing of the workshop on the desk. */
final class FramingOfDesk {

    private FramingOfDesk() {}

    static Framing of(Desk desk) {
        return desk.workshop()
                .find(Framing.class)
                .orElseThrow(() -> new GlinteryException("framing brings this screen but not its service"));
    }
}
