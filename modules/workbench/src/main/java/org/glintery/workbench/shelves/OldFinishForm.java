package org.glintery.workbench.shelves;

import java.time.Clock;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.finishes.Finish;
import org.glintery.workbench.parts.AboutField;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.ScoreFacets;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.openide.util.NbBundle.Messages;

/** Writes down a piece that was finished long ago: a title is enough. Event thread. */
final class OldFinishForm extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int WIDTH_PX = 460;
    private final JTextField title = new JTextField();
    private final AboutField when;
    private final ScoreFacets score = ScoreFacets.choosing(s -> {});
    private final WrappedText missing = Texts.wrappedHint("");

    @Messages({
        "OldFinishForm.title=Title",
        "OldFinishForm.when=Finished",
        "OldFinishForm.score=Score",
        "OldFinishForm.scoreHint=1 to 5, or none"
    })
    OldFinishForm(Clock clock) {
        super(new MigLayout("insets 0, wrap 1", "[" + Space.px(WIDTH_PX) + "!, fill]"));
        setOpaque(false);
        when = new AboutField(clock);
        add(new FormSheet()
                .field(Bundle.OldFinishForm_title(), title)
                .field(Bundle.OldFinishForm_when(), when)
                .field(Bundle.OldFinishForm_score(), score, Bundle.OldFinishForm_scoreHint()));
        add(missing, "wmin 0");
    }

    @Messages({
        "OldFinishForm.needsTitle=Give it a title first. A few words are enough.",
        "OldFinishForm.dateNotUnderstood=The date is not understood yet. Change it, or leave it empty."
    })
    boolean ready() {
        boolean titled = !title.getText().isBlank();
        missing.setText(
                !titled
                        ? Bundle.OldFinishForm_needsTitle()
                        : when.isUnderstood() ? "" : Bundle.OldFinishForm_dateNotUnderstood());
        return titled && when.isUnderstood();
    }

    Finish finish() {
        Finish plain = Finish.titled(title.getText().strip(), when.value());
        Optional<Integer> chosen = score.score();
        return new Finish(
                plain.title(),
                plain.startedOn(),
                plain.finishedOn(),
                chosen,
                "",
                "",
                plain.tools(),
                plain.where(),
                plain.sealing(),
                plain.photos(),
                plain.sketches(),
                "",
                plain.later());
    }
}
