package org.glintery.finishes.ui;

import java.util.UUID;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.stash.Stash;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.EmptyNote;
import org.glintery.workbench.parts.Needs;
import org.glintery.workbench.parts.PageScroll;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;

/** The Finish tab: the form, or the way to begin it. */
final class FinishPart implements ScreenPart<FinishPage> {

    private final UUID piece;
    private final FinishForm form;
    private final JComponent begin;
    private final JButton again;
    private final JComponent page;

    @Messages({
        "FinishPart.none=Nothing written yet",
        "FinishPart.noneText=When the piece is completed its finish begins by itself. It can be written now as well: a title and about when are enough, and any field can be left for later.",
        "FinishPart.begin=Write it up",
        "FinishPart.again=Make it again"
    })
    FinishPart(Desk desk, UUID piece) {
        this.piece = piece;
        FinishEdits edits = new FinishEdits(FinishesOfDesk.of(desk), piece);
        form = new FinishForm(desk, edits);
        begin = new EmptyNote(
                Pictogram.FINISH,
                Bundle.FinishPart_none(),
                Bundle.FinishPart_noneText(),
                Buttons.plain(Bundle.FinishPart_begin(), () -> desk.change(edits.begin())));
        again = Needs.of(desk, Stash.class, Buttons.link(Bundle.FinishPart_again(), () -> makeAgain(desk, piece)));
        again.setVisible(false);
        JPanel column = new JPanel(new MigLayout(
                "insets " + Space.SECTION + ", fillx, wrap 1, hidemode 3",
                "[grow, fill, 0:pref:" + Space.px(Space.READING_WIDTH + 160) + "]"));
        column.setOpaque(false);
        form.setVisible(false);
        begin.setVisible(false);
        column.add(form, "wmin 0");
        column.add(begin, "wmin 0");
        column.add(again, "growx 0");
        page = new PageScroll(column);
    }

    private static void makeAgain(Desk desk, UUID piece) {
        UUID again = UUID.randomUUID();
        desk.change(
                view -> desk.workshop().find(Stash.class).orElseThrow().makeAgain(view, piece, again),
                applied -> desk.openPiece(again));
    }

    @Override
    public FinishPage prepare(View view) {
        return FinishPage.of(view, piece);
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public void show(FinishPage shown) {
        form.setVisible(shown.finish().isPresent());
        begin.setVisible(shown.finish().isEmpty());
        again.setVisible(shown.made());
        shown.finish().ifPresent(finish -> form.show(finish, shown.settleFirst()));
    }
}
