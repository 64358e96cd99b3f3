package org.glintery.stash.ui;

import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.GlinteryException;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.Stash;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.glintery.workbench.spi.TodayCard;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** What runs short on the bench. */
@ServiceProvider(service = TodayCard.class)
public final class ShortagesCard implements TodayCard {

    private static final int POSITION = 400;

    @Override
    @Messages("ShortagesCard.title=Runs short")
    public String title() {
        return Bundle.ShortagesCard_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    @Override
    public boolean offered(View view) {
        return Settings.keepsDrills(view);
    }

    @Override
    public ScreenPart<?> create(Desk desk) {
        return new Part(desk);
    }

    private static final class Part implements ScreenPart<Shortages> {

        private static final int SHOWN = 8;

        private final Desk desk;
        private final Stash stash;
        private final JPanel panel =
                new JPanel(new MigLayout("insets 0, fillx, wrap 2, gapy " + Space.TIGHT, "[grow, fill][trailing]"));

        Part(Desk desk) {
            this.desk = desk;
            this.stash = desk.workshop()
                    .find(Stash.class)
                    .orElseThrow(() -> new GlinteryException("the stash brings this card but not its service"));
            panel.setOpaque(false);
        }

        @Override
        public Shortages prepare(View view) {
            return Shortages.of(view, stash);
        }

        @Override
        public JComponent component() {
            return panel;
        }

        @Override
        @Messages({
            "ShortagesCard.none=There is enough of everything for what is being made.",
            "# {0} - title",
            "# {1} - symbol",
            "# {2} - code",
            "ShortagesCard.line={0}, {1} {2}",
            "# {0} - how many",
            "ShortagesCard.missing={0} missing",
            "# {0} - how many",
            "ShortagesCard.more=and {0} more"
        })
        public void show(Shortages shortages) {
            panel.removeAll();
            if (shortages.lines().isEmpty()) {
                panel.add(Texts.wrappedHint(Bundle.ShortagesCard_none()), "span 2, wmin 0");
            }
            shortages.lines().stream().limit(SHOWN).forEach(line -> {
                String what = Bundle.ShortagesCard_line(line.title(), line.symbol(), line.code());
                panel.add(Buttons.link(what, () -> desk.openPiece(line.piece())), "growx 0, wmin 0");
                panel.add(Texts.line(Bundle.ShortagesCard_missing(line.missing().words())));
            });
            if (shortages.lines().size() > SHOWN) {
                panel.add(
                        Texts.hint(Bundle.ShortagesCard_more(
                                Balance.grouped(shortages.lines().size() - SHOWN))),
                        "span 2");
            }
            panel.revalidate();
            panel.repaint();
        }
    }
}
