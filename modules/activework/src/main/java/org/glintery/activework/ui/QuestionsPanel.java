package org.glintery.activework.ui;

import java.util.List;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.activework.Question;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.FlowRows;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.openide.util.NbBundle.Messages;

/** The questions of a piece: open ones with a way to answer, answered ones with what came of them. Event thread. */
final class QuestionsPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    /** What can be done with a question. */
    interface Acts {
        void answer(QuestionsPage.Line line);

        void showWhere(QuestionsPage.Line line);
    }

    private final transient Acts acts;
    private transient List<QuestionsPage.Line> shown = List.of();

    QuestionsPanel(Acts acts) {
        super(new MigLayout("insets 0, fillx, wrap 2, gapx " + Space.APART + ", gapy " + Space.HAIR, "[][grow, fill]"));
        setOpaque(false);
        this.acts = acts;
        none();
    }

    void show(List<QuestionsPage.Line> questions) {
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
        add(Texts.wrappedHint(Bundle.QuestionsPanel_none()), "span 2, growx, wmin 0");
    }

    @Messages({
        "QuestionsPanel.answer=Answer",
        "QuestionsPanel.where=Show where",
        "# {0} - when",
        "QuestionsPanel.asked=Asked {0}",
        "# {0} - when",
        "QuestionsPanel.askedFirst=Asked {0}, to be settled before sealing, trimming or framing"
    })
    private void add(QuestionsPage.Line line) {
        Question question = line.question().value();
        String when = question.askedOn().words();
        FlowRows ways = FlowRows.of();
        if (line.isOpen()) {
            ways.add(Buttons.link(Bundle.QuestionsPanel_answer(), () -> acts.answer(line)));
        }
        if (question.pin().isPresent()) {
            ways.add(Buttons.link(Bundle.QuestionsPanel_where(), () -> acts.showWhere(line)));
        }
        add(Texts.figure(String.valueOf(line.number())), "spany 3, top");
        add(Texts.body(question.text()), "wmin 0, gaptop " + Space.TIGHT);
        String said = line.isOpen()
                ? question.settleFirst() ? Bundle.QuestionsPanel_askedFirst(when) : Bundle.QuestionsPanel_asked(when)
                : answer(question.answer().orElseThrow());
        add(Texts.wrappedHint(said), "wmin 0");
        add(ways, "wmin 0, gapbottom " + Space.APART);
    }

    @Messages({
        "# {0} - when",
        "# {1} - why",
        "QuestionsPanel.left={0}: left as it is, because {1}",
        "# {0} - when",
        "# {1} - what",
        "QuestionsPanel.changed={0}: changed. {1}"
    })
    private static String answer(Question.Answer given) {
        String when = given.on().words();
        return given.changed()
                ? Bundle.QuestionsPanel_changed(when, given.because())
                : Bundle.QuestionsPanel_left(when, given.because());
    }
}
