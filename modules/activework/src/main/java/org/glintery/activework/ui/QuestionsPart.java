package org.glintery.activework.ui;

import java.util.Optional;
import java.util.UUID;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.activework.ActiveWork;
import org.glintery.api.activework.Question;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.BesideOrBelow;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.PageScroll;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.SectionHeading;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;

/** The Questions tab: doubts about the piece, and its picture with those that are pinned to a spot of it. */
final class QuestionsPart implements ScreenPart<QuestionsPage>, QuestionsPanel.Acts {
    private static final int LIST_PX = 300;
    private static final int PICTURE_PX = 380;
    private final Desk desk;
    private final ActiveWork bench;
    private final UUID piece;
    private final QuestionDialogs dialogs;
    private final QuestionsPanel questions = new QuestionsPanel(this);
    private final PinnedPicture picture;
    private final BesideOrBelow both;
    private final JComponent page;

    @Messages({"QuestionsPart.heading=Questions", "QuestionsPart.ask=Ask"})
    QuestionsPart(Desk desk, UUID piece) {
        this.desk = desk;
        this.bench = BenchOfDesk.of(desk);
        this.piece = piece;
        dialogs = new QuestionDialogs(desk);
        picture = new PinnedPicture(desk, pin -> ask(Optional.of(pin)));
        JPanel list = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy " + Space.APART, "[grow, fill]"));
        list.setOpaque(false);
        list.add(
                new SectionHeading(
                        Bundle.QuestionsPart_heading(),
                        Buttons.plain(Pictogram.QUESTION, Bundle.QuestionsPart_ask(), () -> ask(Optional.empty()))),
                "wmin 0");
        list.add(questions, "wmin 0");
        both = new BesideOrBelow(list, LIST_PX, picture, PICTURE_PX);
        both.setBorder(Space.around(Space.SECTION));
        page = new PageScroll(both);
    }

    @Override
    public QuestionsPage prepare(View view) {
        return QuestionsPage.of(view, piece);
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public void show(QuestionsPage shown) {
        questions.show(shown.lines());
        picture.setVisible(!shown.pictures().isEmpty());
        picture.show(shown);
        both.revalidate();
    }

    @Override
    public void answer(QuestionsPage.Line line) {
        UUID id = line.question().id();
        dialogs.answer(line.question().value())
                .ifPresent(answer -> desk.change(view -> bench.answer(view, id, answer)));
    }

    @Override
    public void showWhere(QuestionsPage.Line line) {
        picture.point(line);
    }

    private void ask(Optional<Question.Pin> pin) {
        UUID id = UUID.randomUUID();
        dialogs.question(piece, pin).ifPresent(question -> desk.change(view -> bench.ask(view, id, question)));
    }
}
