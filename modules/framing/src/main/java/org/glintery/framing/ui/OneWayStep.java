package org.glintery.framing.ui;

import java.util.List;
import java.util.OptionalInt;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.framing.OneWayQuestions;
import org.glintery.workbench.parts.Asking;
import org.glintery.workbench.parts.Caution;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.openide.util.NbBundle.Messages;

/** Before a step that can't be taken back: what it rules out, what is still open, and the way to leave it whole. */
final class OneWayStep {
    private static final int WIDTH_PX = 480;

    /** What the maker says to it. */
    enum Answer {
        GO,
        LEAVE_WHOLE,
        NOT_NOW
    }

    private OneWayStep() {}

    /** Asks where there is something to ask. Event thread; returns when the dialog is closed. */
    @Messages({
        "# {0} - decision",
        "OneWayStep.title={0}: this can not be taken back",
        "OneWayStep.go=Decide on it",
        "OneWayStep.whole=Leave it whole",
        "OneWayStep.notNow=Not now",
        "OneWayStep.plan=Only the decision is kept here; nothing is cut before you cut it. Measure again before you do."
    })
    static Answer answer(Decision decision, List<String> settleFirst) {
        if (!OneWayQuestions.isOneWay(decision)) {
            return Answer.GO;
        }
        JPanel sheet = new JPanel(
                new MigLayout("insets 0, wrap 1, gapy " + Space.APART, "[" + Space.px(WIDTH_PX) + "!, fill]"));
        sheet.setOpaque(false);
        sheet.add(new Caution(DecisionWords.caution(decision)), "wmin 0");
        if (!settleFirst.isEmpty()) {
            sheet.add(new OpenFirst(settleFirst), "wmin 0");
        }
        sheet.add(Texts.wrappedHint(Bundle.OneWayStep_plan()), "wmin 0");
        OptionalInt way = Asking.choose(
                Bundle.OneWayStep_title(DecisionWords.of(decision)),
                sheet,
                () -> true,
                Bundle.OneWayStep_notNow(),
                Bundle.OneWayStep_go(),
                Bundle.OneWayStep_whole());
        if (way.isEmpty()) {
            return Answer.NOT_NOW;
        }
        return way.getAsInt() == 0 ? Answer.GO : Answer.LEAVE_WHOLE;
    }
}
