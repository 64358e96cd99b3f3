package org.glintery.activework.ui;

import java.time.LocalDate;
import java.util.List;
import org.glintery.api.activework.ActiveWork;
import org.glintery.api.activework.Forecast;
import org.glintery.api.activework.Progress;
import org.glintery.api.activework.RunningSitting;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.PieceFace;
import org.glintery.workbench.parts.PieceLinesPart;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.glintery.workbench.spi.TodayCard;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** What is on the bench and when it will be done. */
@ServiceProvider(service = TodayCard.class)
public final class OnTheBenchCard implements TodayCard {

    private static final int POSITION = 100;
    private static final int SHOWN = 8;

    @Override
    @Messages("OnTheBenchCard.title=On the bench")
    public String title() {
        return Bundle.OnTheBenchCard_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    private record Line(PieceFace face, boolean goesOn, Progress progress, Forecast forecast) {}

    @Override
    @Messages("OnTheBenchCard.none=Nothing is on the bench. Open a piece from the shelves and begin a sitting.")
    public ScreenPart<?> create(Desk desk) {
        ActiveWork bench = BenchOfDesk.of(desk);
        return new PieceLinesPart<>(
                desk,
                view -> lines(view, bench, LocalDate.now(desk.clock())),
                OnTheBenchCard::line,
                Bundle.OnTheBenchCard_none(),
                SHOWN);
    }

    private static List<Line> lines(View view, ActiveWork bench, LocalDate today) {
        return view.all(Piece.TYPE).stream()
                .filter(piece -> piece.value().standing() == Standing.ON_THE_BENCH)
                .map(piece -> new Line(
                        PieceFace.of(view, piece.id()),
                        view.find(RunningSitting.TYPE, piece.id()).isPresent(),
                        bench.progress(view, piece.id()),
                        bench.forecast(view, piece.id(), today)))
                .toList();
    }

    @Messages({"# {0} - title", "OnTheBenchCard.goesOn={0} (a sitting goes on)"})
    private static PieceLinesPart.Line line(Line line) {
        String title = line.face().title();
        ProgressPanel progress = new ProgressPanel();
        progress.show(line.progress(), line.forecast());
        return new PieceLinesPart.Line(
                line.face(), line.goesOn() ? Bundle.OnTheBenchCard_goesOn(title) : title, progress);
    }
}
