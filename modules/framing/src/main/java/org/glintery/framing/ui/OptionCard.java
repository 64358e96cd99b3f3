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

    @Messages({"OptionCard.decide=Decide on this", "OptionCard.decided=Decided", "OptionCard.asItIs=It stays as it is."
    })
    OptionCard(Desk desk, HangingOptions all, HangingOptions.Option option, Runnable decide) {
        super(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy " + Space.NEAR, "[grow, fill]"));
        setOpaque(false);
        HangingDrawing drawing = new HangingDrawing(desk);
        drawing.show(Optional.of(option.hanging()), all.wallWidthMm(), all.wallHeightMm());
        Decision decision = option.plan().decision();
        String figures = FigureWords.of(decision, option.hanging().figures());
        CautionNote caution = new CautionNote();
        caution.show(DecisionWords.caution(decision));
        JButton choose = Buttons.plain(Bundle.OptionCard_decide(), decide);
        if (all.decided() == decision) {
            choose.setText(Bundle.OptionCard_decided());
            choose.setIcon(Pictogram.DONE.at(16));
            choose.setEnabled(false);
        }
        add(Texts.heading(DecisionWords.of(decision)));
        add(drawing);
        add(Texts.body(figures.isEmpty() ? Bundle.OptionCard_asItIs() : figures), "wmin 0");
        add(new HowWeKnow(FigureWords.howWeKnow(option.hanging().figures())));
        add(caution, "wmin 0");
        add(choose, "growx 0");
    }
}
