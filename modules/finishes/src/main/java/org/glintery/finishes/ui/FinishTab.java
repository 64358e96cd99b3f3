package org.glintery.finishes.ui;

import java.util.UUID;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.PieceTab;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** The finish of a piece, on its page. */
@ServiceProvider(service = PieceTab.class)
public final class FinishTab implements PieceTab {

    private static final int POSITION = 500;

    @Override
    @Messages("FinishTab.title=Finish")
    public String title() {
        return Bundle.FinishTab_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    @Override
    public ScreenPart<?> create(Desk desk, UUID piece) {
        return new FinishPart(desk, piece);
    }
}
