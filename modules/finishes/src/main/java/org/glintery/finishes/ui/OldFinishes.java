package org.glintery.finishes.ui;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finishes;
import org.glintery.workbench.parts.AboutField;
import org.glintery.workbench.parts.Asking;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.ScoreFacets;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** Writes down finishes from before, one after another: each needs a title, and Enter asks for the next. Event thread. */
final class OldFinishes {

    private static final int WIDTH_PX = 460;

    private final Desk desk;
    private final Finishes finishes;
    private final JTextField title = new JTextField();
    private final AboutField when;
    private final ScoreFacets score = ScoreFacets.choosing(chosen -> {});
    private final WrappedText told = Texts.wrappedHint("");
    private int written;

    OldFinishes(Desk desk, Finishes finishes) {
        this.desk = desk;
        this.finishes = finishes;
        this.when = new AboutField(desk.clock());
    }

    @Messages({
        "OldFinishes.heading=Write old finishes",
        "OldFinishes.title=Title",
        "OldFinishes.when=About when",
        "OldFinishes.score=Score",
        "OldFinishes.scoreHint=1 to 5, or none",
        "OldFinishes.hint=A title and about when are enough. Enter writes it and asks for the next; everything else can be told on its page, now or later.",
        "OldFinishes.write=Write it, and the next"
    })
    void ask() {
        JPanel sheet = new JPanel(
                new MigLayout("insets 0, wrap 1, gapy " + Space.APART, "[" + Space.px(WIDTH_PX) + "!, fill]"));
        sheet.setOpaque(false);
        told.setText(Bundle.OldFinishes_hint());
        sheet.add(new FormSheet()
                .field(Bundle.OldFinishes_title(), title)
                .field(Bundle.OldFinishes_when(), when)
                .field(Bundle.OldFinishes_score(), score, Bundle.OldFinishes_scoreHint()));
        sheet.add(told, "wmin 0");
        // the dialog stays for the next one until it is left
        Asking.ask(Bundle.OldFinishes_heading(), sheet, Bundle.OldFinishes_write(), this::writeOne);
    }

    @Messages({
        "OldFinishes.needsTitle=Give it a title first. A few words are enough.",
        "OldFinishes.dateNotUnderstood=The date is not understood yet. Change it, or leave it empty.",
        "# {0} - title",
        "# {1} - how many",
        "OldFinishes.written={0} is written, {1} in all. What is the next one called?"
    })
    private boolean writeOne() {
        if (title.getText().isBlank()) {
            told.setText(Bundle.OldFinishes_needsTitle());
        } else if (!when.isUnderstood()) {
            told.setText(Bundle.OldFinishes_dateNotUnderstood());
        } else {
            write();
        }
        return false;
    }

    private void write() {
        FinishCopy copy = new FinishCopy(Finish.titled(title.getText().strip(), when.value()));
        copy.score = score.score();
        Finish finish = copy.finish();
        UUID piece = UUID.randomUUID();
        desk.change(view -> finishes.write(view, piece, finish, List.of()));
        written++;
        told.setText(Bundle.OldFinishes_written(finish.title(), String.valueOf(written)));
        title.setText("");
        when.field().setText("");
        score.setScore(Optional.empty());
        title.requestFocusInWindow();
    }
}
