package org.glintery.activework.ui;

import java.util.UUID;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.PieceTab;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** The sittings of a piece, on its page. */
@ServiceProvider(service = PieceTab.class)
public final class SittingsTab implements PieceTab {

    private static final int POSITION = 300;

    @Override
    @Messages("SittingsTab.title=Sittings")
    public String title() {
        return Bundle.SittingsTab_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    @Override
    public ScreenPart<?> create(Desk desk, UUID piece) {
        return new SittingsPart(desk, piece);
    }
}
