package org.glintery.activework.ui;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.activework.Completion;
import org.glintery.api.activework.Question;
import org.glintery.api.time.About;
import org.glintery.workbench.parts.AboutField;
import org.glintery.workbench.parts.Asking;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.ScoreFacets;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** Asks for a completion, a question or an answer. Event thread; returns when the dialog is closed. */
final class BenchDialogs {

    private static final int WIDTH_PX = 460;
    private static final int ROWS = 4;

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
        "BenchDialogs.completeHint=The last drills are booked to its canvas, its finish is begun, and its holder waits to be cleared. What you leave empty is listed as still to be written.",
        "BenchDialogs.date=The date is not understood yet."
    })
    Optional<Completion> completion(UUID piece) {
        AboutField on = new AboutField(desk.clock());
        on.setValue(Optional.of(today()));
        ScoreFacets score = ScoreFacets.choosing(chosen -> {});
        JTextArea comments = area();
        WrappedText words = Texts.wrappedHint(Bundle.BenchDialogs_completeHint());
        JPanel sheet = sheet(new FormSheet()
                .field(Bundle.BenchDialogs_on(), on)
                .field(Bundle.BenchDialogs_score(), score, Bundle.BenchDialogs_scoreHint())
                .field(Bundle.BenchDialogs_comments(), new JScrollPane(comments))
                .whole(words));
        boolean done = Asking.ask(Bundle.BenchDialogs_complete(), sheet, Bundle.BenchDialogs_completeDo(), () -> {
            words.setText(on.isUnderstood() ? Bundle.BenchDialogs_completeHint() : Bundle.BenchDialogs_date());
            return on.isUnderstood();
        });
        return done
                ? Optional.of(new Completion(
                        piece,
                        on.value().orElseGet(this::today),
                        score.score(),
                        comments.getText().strip()))
                : Optional.empty();
    }

    @Messages({
        "BenchDialogs.ask=A question",
        "BenchDialogs.askDo=Keep the question",
        "BenchDialogs.question=What is in doubt",
        "BenchDialogs.settle=To be settled before sealing, trimming or framing",
        "BenchDialogs.needsText=Write a few words first."
    })
    Optional<Question> question(UUID piece) {
        JTextArea text = area();
        JCheckBox settle = new JCheckBox(Bundle.BenchDialogs_settle());
        settle.setOpaque(false);
        WrappedText words = Texts.wrappedHint("");
        JPanel sheet = sheet(new FormSheet()
                .field(Bundle.BenchDialogs_question(), new JScrollPane(text))
                .whole(settle)
                .whole(words));
        boolean done = Asking.ask(Bundle.BenchDialogs_ask(), sheet, Bundle.BenchDialogs_askDo(), () -> {
            words.setText(text.getText().isBlank() ? Bundle.BenchDialogs_needsText() : "");
            return !text.getText().isBlank();
        });
        return done
                ? Optional.of(new Question(
                        piece,
                        text.getText().strip(),
                        Optional.empty(),
                        today(),
                        settle.isSelected(),
                        Optional.empty()))
                : Optional.empty();
    }

    @Messages({
        "BenchDialogs.answerDo=Keep the answer",
        "BenchDialogs.left=Left as it is, because",
        "BenchDialogs.changed=Changed",
        "BenchDialogs.because=Why, or what was changed",
        "BenchDialogs.needsReason=Say why it is left as it is. A few words are enough."
    })
    Optional<Question.Answer> answer(Question question) {
        JRadioButton left = new JRadioButton(Bundle.BenchDialogs_left(), true);
        JRadioButton changed = new JRadioButton(Bundle.BenchDialogs_changed());
        ButtonGroup choice = new ButtonGroup();
        choice.add(left);
        choice.add(changed);
        left.setOpaque(false);
        changed.setOpaque(false);
        JTextArea because = area();
        WrappedText words = Texts.wrappedHint("");
        JPanel sheet = sheet(new FormSheet()
                .whole(left)
                .whole(changed)
                .field(Bundle.BenchDialogs_because(), new JScrollPane(because))
                .whole(words));
        boolean done = Asking.ask(question.text(), sheet, Bundle.BenchDialogs_answerDo(), () -> {
            boolean said = changed.isSelected() || !because.getText().isBlank();
            words.setText(said ? "" : Bundle.BenchDialogs_needsReason());
            return said;
        });
        return done
                ? Optional.of(new Question.Answer(
                        changed.isSelected(), because.getText().strip(), today()))
                : Optional.empty();
    }

    private About today() {
        return About.on(LocalDate.now(desk.clock()));
    }

    private static JTextArea area() {
        JTextArea area = new JTextArea(ROWS, 30);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        return area;
    }

    private static JPanel sheet(FormSheet form) {
        JPanel sheet = new JPanel(new MigLayout("insets 0", "[" + Space.px(WIDTH_PX) + "!, fill]"));
        sheet.setOpaque(false);
        sheet.add(form);
        return sheet;
    }
}
