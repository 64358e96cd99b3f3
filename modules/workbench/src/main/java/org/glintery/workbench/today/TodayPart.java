package org.glintery.workbench.today;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.finishes.Finishes;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Stash;
import org.glintery.api.time.About;
import org.glintery.api.workshop.View;
import org.glintery.workbench.found.Found;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.Card;
import org.glintery.workbench.parts.EmptyNote;
import org.glintery.workbench.parts.Needs;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.shelves.Entries;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.glintery.workbench.spi.TodayCard;
import org.openide.util.NbBundle.Messages;

/** Today's cards, those that have something to say, side by side as room allows. */
final class TodayPart implements ScreenPart<TodayPart.Day> {
    private static final int CARD_PX = 360;
    private static final int MOST_COLUMNS = 3;
    private final Desk desk;
    private final TodayCards offered;
    private final JPanel cards =
            new JPanel(new CardColumns(Space.px(CARD_PX), MOST_COLUMNS, Space.px(Space.APART + Space.TIGHT)));
    private final JPanel page;
    private final JLabel date = Texts.hint("");

    TodayPart(Desk desk) {
        this.desk = desk;
        offered = new TodayCards(desk, Found.all(TodayCard.class));
        cards.setOpaque(false);
        page = new JPanel(new MigLayout(
                "insets " + Space.SECTION + ", fill, wrap 1, gapy " + Space.TIGHT, "[grow, fill]", "[][][grow, fill]"));
        page.setOpaque(false);
        page.add(Texts.title(Bundle.TodayWindow_name()));
        page.add(date, "gapbottom " + Space.APART);
        page.add(cards, "wmin 0");
    }

    /** @param isNew whether there is no piece yet */
    record Day(View view, boolean isNew) {}

    @Override
    public Day prepare(View view) {
        return new Day(view, view.all(Piece.TYPE).isEmpty());
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public void show(Day day) {
        date.setText(today(LocalDate.now(desk.clock())));
        List<JComponent> wanted = new ArrayList<>();
        if (day.isNew()) {
            wanted.add(first());
        } else {
            wanted.addAll(offered.offered(day.view()));
        }
        if (!wanted.equals(List.of(cards.getComponents()))) {
            cards.removeAll();
            wanted.forEach(cards::add);
            cards.revalidate();
            cards.repaint();
        }
    }

    /** "Wednesday, 25 November 2026"; in English, as dates are everywhere on the screens. */
    @Messages({"# {0} - day of the week", "# {1} - date", "TodayPart.date={0}, {1}"})
    private static String today(LocalDate day) {
        String name = day.getDayOfWeek().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
        return Bundle.TodayPart_date(name, About.on(day).words());
    }

    @Messages({
        "TodayPart.first=This workshop is new",
        "TodayPart.firstText=Shelve a kit you have, or write down a piece you finished. From then on this page tells what is on the bench and what is still to be done.",
        "TodayPart.kit=Shelve a kit",
        "TodayPart.finish=Write old finishes"
    })
    private JComponent first() {
        return new Card(
                "",
                new EmptyNote(
                        Pictogram.TODAY,
                        Bundle.TodayPart_first(),
                        Bundle.TodayPart_firstText(),
                        Needs.of(desk, Stash.class, Buttons.plain(Bundle.TodayPart_kit(), () -> Entries.newKit(desk))),
                        Needs.of(
                                desk,
                                Finishes.class,
                                Buttons.plain(Bundle.TodayPart_finish(), () -> Entries.oldFinish(desk)))));
    }
}
