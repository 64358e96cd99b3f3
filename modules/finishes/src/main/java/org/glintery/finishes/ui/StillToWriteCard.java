package org.glintery.finishes.ui;

import org.glintery.api.finishes.Finishes;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.MenuActions;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.PieceFace;
import org.glintery.workbench.parts.PieceLinesPart;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.glintery.workbench.spi.TodayCard;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** Which finishes are still to be written. */
@ServiceProvider(service = TodayCard.class)
public final class StillToWriteCard implements TodayCard {

    private static final int POSITION = 200;
    private static final int SHOWN = 5;

    @Override
    @Messages("StillToWriteCard.title=Still to be written")
    public String title() {
        return Bundle.StillToWriteCard_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    private record Line(PieceFace face, String fields) {}

    @Override
    @Messages({"StillToWriteCard.none=Nothing is left for later.", "StillToWriteCard.old=Write old finishes"})
    public ScreenPart<?> create(Desk desk) {
        Finishes finishes = FinishesOfDesk.of(desk);
        return new PieceLinesPart<>(
                desk,
                view -> finishes.stillToWrite(view).stream()
                        .map(one -> new Line(PieceFace.of(view, one.piece()), FieldWords.list(one.fields())))
                        .toList(),
                (Line line) -> PieceLinesPart.line(line.face(), Texts.wrappedHint(line.fields())),
                Bundle.StillToWriteCard_none(),
                SHOWN,
                Buttons.plain(
                        Pictogram.FINISH,
                        Bundle.StillToWriteCard_old(),
                        () -> MenuActions.run("Workshop", "OldFinishAction")));
    }
}
