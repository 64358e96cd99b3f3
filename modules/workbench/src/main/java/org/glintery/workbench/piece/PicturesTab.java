package org.glintery.workbench.piece;

import java.util.UUID;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.PieceTab;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** The pictures of a piece, on its page. */
@ServiceProvider(service = PieceTab.class)
public final class PicturesTab implements PieceTab {
    private static final int POSITION = 450;

    @Override
    @Messages("PicturesTab.title=Pictures")
    public String title() {
        return Bundle.PicturesTab_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    @Override
    public ScreenPart<?> create(Desk desk, UUID piece) {
        return new PicturesPart(desk, piece);
    }
}
