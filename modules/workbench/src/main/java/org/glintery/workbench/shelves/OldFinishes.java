package org.glintery.workbench.shelves;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finishes;
import org.glintery.api.ledger.Balance;
import org.glintery.api.workshop.Blob;
import org.glintery.workbench.parts.AboutField;
import org.glintery.workbench.parts.Asking;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.PictureDrop;
import org.glintery.workbench.parts.ScoreFacets;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/**
 * Writes down finishes from before, one after another: a title is enough, and Enter in any field writes it and asks for
 * the next. Event thread.
 */
final class OldFinishes {
    private static final int WIDTH_PX = 520;
    private final Desk desk;
    private final Finishes finishes;
    private final JTextField title = new JTextField();
    private final AboutField when;
    private final ScoreFacets score = ScoreFacets.choosing(chosen -> {});
    private final JTextField comments = new JTextField();
    private final WrappedText told = Texts.wrappedHint("");
    private final List<PictureDrop.Taken> photos = new ArrayList<>();
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
        "OldFinishes.scoreHint=1 to 5 on the keyboard, or none",
        "OldFinishes.comments=Anything to say",
        "OldFinishes.hint=A title is enough. Enter writes it and asks for the next; a photo can be dropped here. Everything else can be told on its page, now or later.",
        "OldFinishes.write=Write it, and the next",
        "OldFinishes.done=Done"
    })
    void ask() {
        JPanel sheet = new JPanel(
                new MigLayout("insets 0, wrap 1, gapy " + Space.APART, "[" + Space.px(WIDTH_PX) + "!, fill]"));
        sheet.setOpaque(false);
        told.setText(Bundle.OldFinishes_hint());
        sheet.add(new FormSheet(2)
                .wide(Bundle.OldFinishes_title(), title, "")
                .field(Bundle.OldFinishes_when(), when)
                .field(Bundle.OldFinishes_score(), score, Bundle.OldFinishes_scoreHint())
                .wide(Bundle.OldFinishes_comments(), comments, ""));
        sheet.add(told, "wmin 0");
        PictureDrop.onto(sheet, desk, this::addPhoto);
        // the dialog stays for the next one until it is left
        Asking.choose(
                Bundle.OldFinishes_heading(),
                sheet,
                this::writeOne,
                Bundle.OldFinishes_done(),
                Bundle.OldFinishes_write());
    }

    @Messages({
        "# {0} - how many",
        "# {1} - how many in words",
        "OldFinishes.photos={0,choice,1#One photo|1<{1} photos} for this one."
    })
    private void addPhoto(PictureDrop.Taken taken) {
        photos.add(taken);
        told.setText(Bundle.OldFinishes_photos(photos.size(), Balance.grouped(photos.size())));
    }

    @Messages({
        "OldFinishes.needsTitle=Give it a title first. A few words are enough.",
        "OldFinishes.dateNotUnderstood=The date is not understood yet. Change it, or leave it empty."
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

    @Messages({
        "# {0} - title",
        "# {1} - how many",
        "OldFinishes.written={0} is written, {1} in all. What is the next one called?"
    })
    private void write() {
        Finish plain = Finish.titled(title.getText().strip(), when.value());
        Finish finish = new Finish(
                plain.title(),
                plain.startedOn(),
                plain.finishedOn(),
                score.score(),
                plain.making(),
                plain.altered(),
                plain.tools(),
                plain.where(),
                plain.sealing(),
                photos.stream().map(PictureDrop.Taken::picture).toList(),
                plain.sketches(),
                comments.getText().strip(),
                plain.later());
        List<Blob> bytes = photos.stream().map(PictureDrop.Taken::blob).toList();
        UUID piece = UUID.randomUUID();
        desk.change(view -> finishes.write(view, piece, finish, bytes));
        written++;
        told.setText(Bundle.OldFinishes_written(finish.title(), String.valueOf(written)));
        clear();
    }

    private void clear() {
        title.setText("");
        when.field().setText("");
        score.setScore(Optional.empty());
        comments.setText("");
        photos.clear();
        title.requestFocusInWindow();
    }
}
