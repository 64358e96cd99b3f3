package org.glintery.activework.ui;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import org.glintery.activework.NotYet;
import org.glintery.api.Refusal;
import org.glintery.api.activework.Completion;
import org.glintery.api.finishes.Finishes;
import org.glintery.api.time.About;
import org.glintery.workbench.parts.AboutField;
import org.glintery.workbench.parts.Asking;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.Needs;
import org.glintery.workbench.parts.ScoreFacets;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** Asks for a completion, a question or an answer. Event thread; returns when the dialog is closed. */
final class BenchDialogs {

    private final Desk desk;

    BenchDialogs(Desk desk) {
        this.desk = desk;
    }

    @Messages({
        "BenchDialogs.complete=Complete the piece",
        "BenchDialogs.completeDo=It is made",
        "BenchDialogs.on=When it was finished",
        "BenchDialogs.score=Score",
        "BenchDialogs.scoreHint=1 to 5, or none",
        "BenchDialogs.comments=Anything to say already",
        "BenchDialogs.completeHint=What is not laid by then counts as laid, its finish is begun, and its holder waits to be cleared. What you leave empty is listed as still to be written.",
        "BenchDialogs.date=The date is not understood yet."
    })
    Optional<Completion> completion(UUID piece) {
        AboutField on = new AboutField(desk.clock());
        on.setValue(Optional.of(today()));
        ScoreFacets score = ScoreFacets.choosing(chosen -> {});
        JTextArea comments = DialogSheet.area();
        WrappedText words = Texts.wrappedHint(Bundle.BenchDialogs_completeHint());
        FormSheet form = new FormSheet().field(Bundle.BenchDialogs_on(), on);
        Optional<String> unwritten = Needs.words(desk, Finishes.class);
        if (unwritten.isPresent()) {
            form.field(Bundle.BenchDialogs_score(), Texts.wrappedHint(unwritten.get()));
        } else {
            form.field(Bundle.BenchDialogs_score(), score, Bundle.BenchDialogs_scoreHint())
                    .field(Bundle.BenchDialogs_comments(), new JScrollPane(comments));
        }
        DialogSheet sheet = new DialogSheet(form.whole(words));
        boolean done = Asking.ask(Bundle.BenchDialogs_complete(), sheet, Bundle.BenchDialogs_completeDo(), () -> {
            Optional<String> trouble = trouble(on);
            words.setText(trouble.orElse(Bundle.BenchDialogs_completeHint()));
            return trouble.isEmpty();
        });
        return done
                ? Optional.of(new Completion(
                        piece,
                        on.value().orElseGet(this::today),
                        score.score(),
                        comments.getText().strip()))
                : Optional.empty();
    }

    private Optional<String> trouble(AboutField on) {
        return on.isUnderstood()
                ? on.value().flatMap(day -> NotYet.refusal(desk.view(), day)).map(Refusal::text)
                : Optional.of(Bundle.BenchDialogs_date());
    }

    private About today() {
        return About.on(LocalDate.now(desk.clock()));
    }
}
