package org.glintery.framing.ui;

import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.HowWeKnow;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** One way to hang: drawn, with its rails, and the way to decide on it. Event thread. */
final class OptionCard extends JPanel {

    private static final long serialVersionUID = 1L;

    private static final int DRAWING_PX = 280;

    @Messages({"OptionCard.decide=Decide on this", "OptionCard.decided=Decided"})
    OptionCard(Desk desk, HangingOptions all, HangingOptions.Option option, Runnable decide) {
        super(new MigLayout(
                "insets 0, fill, wrap 1, hidemode 3, gapy " + Space.NEAR, "[grow, fill]", "[][][][]push[]"));
        Texts.asCard(this);
        HangingDrawing drawing = new HangingDrawing(desk);
        drawing.show(Optional.of(option.hanging()), all.wallWidthMm(), all.wallHeightMm());
        Decision decision = option.plan().decision();
        boolean framed = decision == Decision.FRAMED;
        String figures = FigureWords.of(decision, option.hanging().figures());
        JButton choose = Buttons.plain(Bundle.OptionCard_decide(), decide);
        choose.getAccessibleContext().setAccessibleDescription(DecisionWords.of(decision));
        if (all.decided() == decision) {
            choose.setText(Bundle.OptionCard_decided());
            choose.setIcon(Pictogram.DONE.at(16));
            choose.setEnabled(false);
        }
        add(Texts.explained(Texts.heading(DecisionWords.of(decision))));
        add(drawing, "h " + Space.px(DRAWING_PX) + "!, wmin 0");
        add(Texts.body(framed ? figures + "\n" + FigureWords.of(option.depth()) : figures), "wmin 0");
        String how = FigureWords.howWeKnow(option.hanging().figures());
        add(new HowWeKnow(framed ? how + " " + FigureWords.howWeKnow(option.depth()) : how));
        add(choose, "growx 0");
    }
}
