package org.glintery.stash.ui;

import java.util.List;
import java.util.UUID;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.ledger.Balance;
import org.glintery.api.storage.SpotNames;
import org.glintery.api.workshop.FoundDrills;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.stash.FoundPlaces;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.glintery.workbench.spi.TodayCard;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** Drills that were there though they were not booked, until the maker has looked. */
@ServiceProvider(service = TodayCard.class)
public final class FoundCard implements TodayCard {

    private static final int POSITION = 420;

    @Override
    @Messages("FoundCard.title=Found, please look")
    public String title() {
        return Bundle.FoundCard_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    @Override
    public boolean offered(View view) {
        return Settings.keepsDrills(view) && !FoundPlaces.all(view).isEmpty();
    }

    @Override
    public ScreenPart<?> create(Desk desk) {
        return new Part(desk);
    }

    /** One flag in words. */
    private record Line(UUID flag, String words) {}

    private static final class Part implements ScreenPart<List<Line>> {

        private static final int SHOWN = 6;

        private final Desk desk;
        private final JPanel panel =
                new JPanel(new MigLayout("insets 0, fillx, wrap 2, gapy " + Space.TIGHT, "[grow, fill][trailing]"));

        Part(Desk desk) {
            this.desk = desk;
            panel.setOpaque(false);
        }

        @Override
        @Messages({
            "# {0} - how many",
            "# {1} - drill",
            "# {2} - place",
            "FoundCard.line={0} more of {1} than was booked: {2}"
        })
        public List<Line> prepare(View view) {
            return FoundPlaces.all(view).stream()
                    .map(found -> new Line(found.id(), words(view, found)))
                    .toList();
        }

        private static String words(View view, Stored<FoundDrills> found) {
            FoundDrills flag = found.value();
            return Bundle.FoundCard_line(
                    Balance.grouped(flag.count()), flag.drill().code(), SpotNames.words(view, flag.at()));
        }

        @Override
        public JComponent component() {
            return panel;
        }

        @Override
        @Messages({
            "FoundCard.none=Nothing was found that you have not looked at.",
            "FoundCard.looked=Looked at",
            "# {0} - how many",
            "FoundCard.more=and {0} more"
        })
        public void show(List<Line> lines) {
            panel.removeAll();
            if (lines.isEmpty()) {
                panel.add(Texts.wrappedHint(Bundle.FoundCard_none()), "span 2, wmin 0");
            }
            lines.stream().limit(SHOWN).forEach(line -> {
                panel.add(Texts.line(line.words()), "growx 0, wmin 0");
                panel.add(Buttons.link(
                        Bundle.FoundCard_looked(), () -> desk.change(view -> FoundPlaces.lookedAt(view, line.flag()))));
            });
            if (lines.size() > SHOWN) {
                panel.add(Texts.hint(Bundle.FoundCard_more(Balance.grouped(lines.size() - SHOWN))), "span 2");
            }
            panel.revalidate();
            panel.repaint();
        }
    }
}
