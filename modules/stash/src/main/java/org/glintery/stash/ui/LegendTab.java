package org.glintery.stash.ui;

import java.util.UUID;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.PieceTab;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** The legend of a piece, on its page. */
@ServiceProvider(service = PieceTab.class)
public final class LegendTab implements PieceTab {

    private static final int POSITION = 200;

    @Override
    @Messages("LegendTab.title=Legend")
    public String title() {
        return Bundle.LegendTab_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    @Override
    public ScreenPart<?> create(Desk desk, UUID piece) {
        return new LegendPart(desk, piece);
    }
}
