package org.glintery.workbench.piece;

import java.util.UUID;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.PieceTab;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** The maker's words about a piece, and what happened to it. */
@ServiceProvider(service = PieceTab.class)
public final class StoryTab implements PieceTab {
    private static final int POSITION = 100;

    @Override
    @Messages("StoryTab.title=Story")
    public String title() {
        return Bundle.StoryTab_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    @Override
    public ScreenPart<?> create(Desk desk, UUID piece) {
        return new StoryPart(desk, piece);
    }
}
