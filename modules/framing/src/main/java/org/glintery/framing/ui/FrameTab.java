package org.glintery.framing.ui;

import java.util.UUID;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.PieceTab;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** The frame of a piece, on its page. */
@ServiceProvider(service = PieceTab.class)
public final class FrameTab implements PieceTab {

    private static final int POSITION = 600;

    @Override
    @Messages("FrameTab.title=Frame")
    public String title() {
        return Bundle.FrameTab_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    @Override
    public ScreenPart<?> create(Desk desk, UUID piece) {
        return new FramePart(desk, piece);
    }
}
