package org.glintery.activework.ui;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBox;
import javax.swing.JRadioButton;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import org.glintery.api.activework.Question;
import org.glintery.api.time.About;
import org.glintery.workbench.parts.Asking;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** Asks for a question or an answer. Event thread; returns when the dialog is closed. */
final class QuestionDialogs {
    private final Desk desk;

    QuestionDialogs(Desk desk) {
        this.desk = desk;
    }

    @Messages({
        "QuestionDialogs.ask=A question",
        "QuestionDialogs.askDo=Keep the question",
        "QuestionDialogs.question=What is in doubt",
        "QuestionDialogs.settle=To be settled before sealing, trimming or framing",
        "QuestionDialogs.pinned=It is pinned to the spot you chose on the picture.",
        "QuestionDialogs.needsText=Write a few words first."
    })
    Optional<Question> question(UUID piece, Optional<Question.Pin> pin) {
        JTextArea text = DialogSheet.area();
        JCheckBox settle = new JCheckBox(Bundle.QuestionDialogs_settle());
        settle.setOpaque(false);
        WrappedText words = Texts.wrappedHint("");
        DialogSheet sheet = new DialogSheet(new FormSheet()
                .field(Bundle.QuestionDialogs_question(), new JScrollPane(text))
                .whole(settle)
                .whole(words));
        words.setText(pin.isPresent() ? Bundle.QuestionDialogs_pinned() : "");
        boolean done = Asking.ask(Bundle.QuestionDialogs_ask(), sheet, Bundle.QuestionDialogs_askDo(), () -> {
            words.setText(text.getText().isBlank() ? Bundle.QuestionDialogs_needsText() : "");
            return !text.getText().isBlank();
        });
        return done
                ? Optional.of(new Question(
                        piece, text.getText().strip(), pin, today(), settle.isSelected(), Optional.empty()))
                : Optional.empty();
    }

    @Messages({
        "QuestionDialogs.answer=Answer a question",
        "QuestionDialogs.answerDo=Keep the answer",
        "QuestionDialogs.left=Left as it is, because",
        "QuestionDialogs.changed=Changed",
        "QuestionDialogs.because=Why, or what was changed",
        "QuestionDialogs.needsReason=Say why it is left as it is. A few words are enough."
    })
    Optional<Question.Answer> answer(Question question) {
        JRadioButton left = new JRadioButton(Bundle.QuestionDialogs_left(), true);
        JRadioButton changed = new JRadioButton(Bundle.QuestionDialogs_changed());
        ButtonGroup choice = new ButtonGroup();
        choice.add(left);
        choice.add(changed);
        left.setOpaque(false);
        changed.setOpaque(false);
        JTextArea because = DialogSheet.area();
        WrappedText words = Texts.wrappedHint("");
        DialogSheet sheet = new DialogSheet(new FormSheet()
                .whole(Texts.body(question.text()))
                .whole(left)
                .whole(changed)
                .field(Bundle.QuestionDialogs_because(), new JScrollPane(because))
                .whole(words));
        boolean done = Asking.ask(Bundle.QuestionDialogs_answer(), sheet, Bundle.QuestionDialogs_answerDo(), () -> {
            boolean said = changed.isSelected() || !because.getText().isBlank();
            words.setText(said ? "" : Bundle.QuestionDialogs_needsReason());
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
}
