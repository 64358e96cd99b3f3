package org.glintery.finishes.ui;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.finishes.Finishes;
import org.glintery.api.finishes.Finishes.ToWrite;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.Space;
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

    @Override
    @Messages("StillToWriteCard.title=Still to be written")
    public String title() {
        return Bundle.StillToWriteCard_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    @Override
    public ScreenPart<?> create(Desk desk) {
        return new Part(desk);
    }

    private static final class Part implements ScreenPart<List<ToWrite>> {

        private static final int SHOWN = 6;

        private final Desk desk;
        private final Finishes finishes;
        private final JPanel panel =
                new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy " + Space.TIGHT, "[grow, fill]"));

        Part(Desk desk) {
            this.desk = desk;
            this.finishes = FinishesOfDesk.of(desk);
            panel.setOpaque(false);
        }

        @Override
        public List<ToWrite> prepare(View view) {
            return finishes.stillToWrite(view);
        }

        @Override
        public JComponent component() {
            return panel;
        }

        @Override
        @Messages({
            "StillToWriteCard.none=Nothing is left for later.",
            "# {0} - how many",
            "StillToWriteCard.more=and {0} more",
            "StillToWriteCard.old=Write old finishes"
        })
        public void show(List<ToWrite> toWrite) {
            panel.removeAll();
            if (toWrite.isEmpty()) {
                panel.add(Texts.wrappedHint(Bundle.StillToWriteCard_none()), "wmin 0");
            }
            toWrite.stream().limit(SHOWN).forEach(one -> {
                panel.add(Buttons.link(one.title(), () -> desk.openPiece(one.piece())), "growx 0, wmin 0");
                panel.add(Texts.wrappedHint(FieldWords.list(one.fields())), "wmin 0");
            });
            if (toWrite.size() > SHOWN) {
                panel.add(Texts.hint(Bundle.StillToWriteCard_more(String.valueOf(toWrite.size() - SHOWN))));
            }
            panel.add(
                    Buttons.plain(
                            Pictogram.FINISH,
                            Bundle.StillToWriteCard_old(),
                            () -> new OldFinishes(desk, finishes).ask()),
                    "growx 0, gaptop " + Space.NEAR);
            panel.revalidate();
            panel.repaint();
        }
    }
}
