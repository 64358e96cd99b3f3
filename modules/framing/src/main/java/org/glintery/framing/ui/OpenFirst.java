package org.glintery.framing.ui;

import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.openide.util.NbBundle.Messages;

/** The open questions that have to be settled before a one-way step. Event thread. */
final class OpenFirst extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int ICON_PX = 16;

    @Messages("OpenFirst.heading=Still open, to be settled first")
    OpenFirst(List<String> questions) {
        super(new MigLayout("insets 0, fillx, wrap 2, gapy " + Space.TIGHT, "[][grow, fill]"));
        setOpaque(false);
        add(Texts.line(Bundle.OpenFirst_heading()), "span 2");
        for (String question : questions) {
            add(new JLabel(Pictogram.QUESTION.at(ICON_PX)), "top");
            add(Texts.body(question), "wmin 0");
        }
    }
}
