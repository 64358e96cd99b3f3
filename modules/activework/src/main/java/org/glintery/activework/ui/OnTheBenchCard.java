package org.glintery.activework.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.activework.ActiveWork;
import org.glintery.api.activework.Forecast;
import org.glintery.api.activework.Progress;
import org.glintery.api.activework.RunningSitting;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.glintery.workbench.spi.TodayCard;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** What is on the bench and when it will be done. */
@ServiceProvider(service = TodayCard.class)
public final class OnTheBenchCard implements TodayCard {

    private static final int POSITION = 100;

    @Override
    @Messages("OnTheBenchCard.title=On the bench")
    public String title() {
        return Bundle.OnTheBenchCard_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    @Override
    public ScreenPart<?> create(Desk desk) {
        return new Part(desk);
    }

    private record Line(UUID piece, String title, boolean goesOn, Progress progress, Forecast forecast) {}

    private static final class Part implements ScreenPart<List<Line>> {

        private static final int SHOWN = 8;

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
            LocalDate today = LocalDate.now(desk.clock());
            return view.all(Piece.TYPE).stream()
                    .filter(piece -> piece.value().standing() == Standing.ON_THE_BENCH)
                    .limit(SHOWN)
                    .map(piece -> new Line(
                            piece.id(),
                            piece.value().title(),
                            view.find(RunningSitting.TYPE, piece.id()).isPresent(),
                            bench.progress(view, piece.id()),
                            bench.forecast(view, piece.id(), today)))
                    .toList();
        }

        @Override
        public JComponent component() {
            return panel;
        }

        @Override
        @Messages({
            "OnTheBenchCard.none=Nothing is on the bench. Open a piece from the shelves and begin a sitting.",
            "# {0} - title",
            "OnTheBenchCard.goesOn={0} (a sitting goes on)"
        })
        public void show(List<Line> lines) {
            panel.removeAll();
            if (lines.isEmpty()) {
                panel.add(Texts.wrappedHint(Bundle.OnTheBenchCard_none()), "wmin 0");
            }
            for (Line line : lines) {
                String title = line.goesOn() ? Bundle.OnTheBenchCard_goesOn(line.title()) : line.title();
                panel.add(Buttons.link(title, () -> desk.openPiece(line.piece())), "growx 0, wmin 0");
                ProgressPanel progress = new ProgressPanel();
                progress.show(line.progress(), line.forecast());
                panel.add(progress, "wmin 0, gapbottom " + Space.NEAR);
            }
            panel.revalidate();
            panel.repaint();
        }
    }
}
