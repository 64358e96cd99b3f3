package org.glintery.addon.sample;

import java.time.LocalDate;
import java.util.List;
import javax.swing.JComponent;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.glintery.workbench.spi.TodayCard;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** Today's card of made pieces that want a look. */
@ServiceProvider(service = TodayCard.class)
public final class CareCard implements TodayCard {
    private static final int POSITION = 700;

    @Override
    @Messages("CareCard.title=Worth a look")
    public String title() {
        return Bundle.CareCard_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    @Override
    public ScreenPart<?> create(Desk desk) {
        return new Part(desk);
    }

    private static final class Part implements ScreenPart<List<CareBook.Due>> {
        private static final int SHOWN = 5;
        private final Desk desk;
        private final CareBook book;
        private final FormSheet sheet = new FormSheet();

        Part(Desk desk) {
            this.desk = desk;
            book = desk.workshop().find(CareBook.class).orElseThrow();
        }

        @Override
        public List<CareBook.Due> prepare(View view) {
            return book.due(view, LocalDate.now(desk.clock()));
        }

        @Override
        public JComponent component() {
            return sheet;
        }

        @Override
        @Messages({
            "CareCard.none=Every finished piece was looked after within a year.",
            "# {0} - when",
            "CareCard.since=not looked after since {0}",
            "# {0} - how many",
            "CareCard.more=and {0} more"
        })
        public void show(List<CareBook.Due> due) {
            sheet.removeAll();
            for (CareBook.Due one : due.stream().limit(SHOWN).toList()) {
                sheet.whole(Buttons.link(one.title(), () -> desk.openPiece(one.piece())));
                sheet.whole(Texts.wrappedHint(Bundle.CareCard_since(one.since().words())));
            }
            if (due.isEmpty()) {
                sheet.whole(Texts.wrappedHint(Bundle.CareCard_none()));
            } else if (due.size() > SHOWN) {
                sheet.whole(Texts.hint(Bundle.CareCard_more(due.size() - SHOWN)));
            }
            sheet.revalidate();
            sheet.repaint();
        }
    }
}
