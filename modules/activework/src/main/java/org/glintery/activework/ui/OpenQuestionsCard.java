package org.glintery.activework.ui;

import java.util.List;
import java.util.UUID;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.activework.ActiveWork;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.Space;
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

    @Override
    @Messages("OpenQuestionsCard.title=Open questions")
    public String title() {
        return Bundle.OpenQuestionsCard_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    @Override
    public ScreenPart<?> create(Desk desk) {
        return new Part(desk);
    }

    private record Line(UUID piece, String title, String text, boolean settleFirst) {}

    private static final class Part implements ScreenPart<List<Line>> {

        private static final int SHOWN = 6;

        private final Desk desk;
        private final ActiveWork bench;
        private final JPanel panel =
                new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy " + Space.TIGHT, "[grow, fill]"));

        Part(Desk desk) {
            this.desk = desk;
            this.bench = BenchOfDesk.of(desk);
            panel.setOpaque(false);
        }

        @Override
        public List<Line> prepare(View view) {
            return bench.openQuestions(view).stream()
                    .map(question -> new Line(
                            question.value().piece(),
                            view.find(Piece.TYPE, question.value().piece())
                                    .map(piece -> piece.value().title())
                                    .orElse(""),
                            question.value().text(),
                            question.value().settleFirst()))
                    .toList();
        }

        @Override
        public JComponent component() {
            return panel;
        }

        @Override
        @Messages({
            "OpenQuestionsCard.none=No doubt waits for an answer.",
            "# {0} - question",
            "OpenQuestionsCard.first={0} (before sealing, trimming or framing)",
            "# {0} - how many",
            "OpenQuestionsCard.more=and {0} more"
        })
        public void show(List<Line> lines) {
            panel.removeAll();
            if (lines.isEmpty()) {
                panel.add(Texts.wrappedHint(Bundle.OpenQuestionsCard_none()), "wmin 0");
            }
            lines.stream().limit(SHOWN).forEach(line -> {
                panel.add(Buttons.link(line.title(), () -> desk.openPiece(line.piece())), "growx 0, wmin 0");
                String text = line.settleFirst() ? Bundle.OpenQuestionsCard_first(line.text()) : line.text();
                panel.add(Texts.body(text), "wmin 0, gapbottom " + Space.TIGHT);
            });
            if (lines.size() > SHOWN) {
                panel.add(Texts.hint(Bundle.OpenQuestionsCard_more(String.valueOf(lines.size() - SHOWN))));
            }
            panel.revalidate();
            panel.repaint();
        }
    }
}
