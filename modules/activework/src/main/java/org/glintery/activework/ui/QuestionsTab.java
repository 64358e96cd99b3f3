package org.glintery.activework.ui;

import java.util.UUID;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.PieceTab;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** The doubts about a piece, on its page. */
@ServiceProvider(service = PieceTab.class)
public final class QuestionsTab implements PieceTab {
    private static final int POSITION = 400;

    @Override
    @Messages("QuestionsTab.title=Questions")
    public String title() {
        return Bundle.QuestionsTab_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    @Override
    public ScreenPart<?> create(Desk desk, UUID piece) {
        return new QuestionsPart(desk, piece);
    }
}
