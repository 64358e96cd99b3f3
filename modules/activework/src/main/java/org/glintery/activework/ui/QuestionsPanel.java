package org.glintery.activework.ui;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.activework.Question;
import org.glintery.api.workshop.Stored;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.openide.util.NbBundle.Messages;

/** The questions of a piece: open ones with a way to answer, answered ones with what came of them. Event thread. */
final class QuestionsPanel extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Consumer<Stored<Question>> answer;
    private transient List<Stored<Question>> shown = List.of();

    QuestionsPanel(Consumer<Stored<Question>> answer) {
        super(new MigLayout("insets 0, fillx, wrap 2, gapy " + Space.TIGHT, "[grow, fill][]"));
        setOpaque(false);
        this.answer = answer;
        none();
    }

    void show(List<Stored<Question>> questions) {
        if (questions.equals(shown)) {
            return;
        }
        shown = questions;
        removeAll();
        questions.forEach(this::add);
        if (questions.isEmpty()) {
            none();
        }
        revalidate();
        repaint();
    }

    @Messages("QuestionsPanel.none=No question yet. A doubt that is written down can wait without being forgotten.")
    private void none() {
        add(Texts.wrappedHint(Bundle.QuestionsPanel_none()), "span 2, wmin 0");
    }

    @Messages({
        "QuestionsPanel.answer=Answer",
        "# {0} - when",
        "QuestionsPanel.asked=Asked {0}",
        "# {0} - when",
        "QuestionsPanel.askedFirst=Asked {0}, to be settled before sealing, trimming or framing",
        "# {0} - why",
        "QuestionsPanel.left=Left as it is, because {0}",
        "# {0} - why",
        "QuestionsPanel.changed=Changed. {0}"
    })
    private void add(Stored<Question> stored) {
        Question question = stored.value();
        add(Texts.body(question.text()), "wmin 0, gaptop " + Space.TIGHT);
        if (question.answer().isEmpty()) {
            add(Buttons.link(Bundle.QuestionsPanel_answer(), () -> answer.accept(stored)), "top");
            String when = question.askedOn().words();
            add(
                    Texts.wrappedHint(
                            question.settleFirst()
                                    ? Bundle.QuestionsPanel_askedFirst(when)
                                    : Bundle.QuestionsPanel_asked(when)),
                    "span 2, wmin 0");
        } else {
            Question.Answer given = question.answer().get();
            add(Texts.hint(given.on().words()), "top");
            add(
                    Texts.wrappedHint(
                            given.changed()
                                    ? Bundle.QuestionsPanel_changed(given.because())
                                    : Bundle.QuestionsPanel_left(given.because())),
                    "span 2, wmin 0");
        }
    }
}
