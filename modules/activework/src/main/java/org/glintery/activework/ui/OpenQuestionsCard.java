package org.glintery.activework.ui;

import org.glintery.api.activework.ActiveWork;
import org.glintery.api.activework.Question;
import org.glintery.api.workshop.Stored;
import org.glintery.workbench.parts.PieceFace;
import org.glintery.workbench.parts.PieceLinesPart;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.glintery.workbench.spi.TodayCard;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** Doubts that wait for an answer. */
@ServiceProvider(service = TodayCard.class)
public final class OpenQuestionsCard implements TodayCard {

    private static final int POSITION = 300;
    private static final int SHOWN = 5;

    @Override
    @Messages("OpenQuestionsCard.title=Open questions")
    public String title() {
        return Bundle.OpenQuestionsCard_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    private record Line(PieceFace face, Question question) {}

    @Override
    @Messages("OpenQuestionsCard.none=No doubt waits for an answer.")
    public ScreenPart<?> create(Desk desk) {
        ActiveWork bench = BenchOfDesk.of(desk);
        return new PieceLinesPart<>(
                desk,
                view -> bench.openQuestions(view).stream()
                        .map(Stored::value)
                        .map(question -> new Line(PieceFace.of(view, question.piece()), question))
                        .toList(),
                OpenQuestionsCard::line,
                Bundle.OpenQuestionsCard_none(),
                SHOWN);
    }

    @Messages({"# {0} - question", "OpenQuestionsCard.first={0} (before sealing, trimming or framing)"})
    private static PieceLinesPart.Line line(Line line) {
        String text = line.question().text();
        return PieceLinesPart.line(
                line.face(), Texts.body(line.question().settleFirst() ? Bundle.OpenQuestionsCard_first(text) : text));
    }
}
