package org.glintery.workbench.parts;

import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSeparator;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Stable;

/** A heading with a line under it, and what can be done with the section at its right. Event thread. */
@Stable
public final class SectionHeading extends JPanel {
    private static final long serialVersionUID = 1L;
    private final JLabel heading;

    public SectionHeading(String text, JComponent... atTheRight) {
        super(new MigLayout("insets 0, fillx, wrap 1, gapy " + Space.TIGHT, "[grow, fill]"));
        setOpaque(false);
        heading = Texts.explained(Texts.heading(text));
        add(FlowRows.growing(heading, atTheRight), "wmin 0");
        add(new JSeparator());
    }

    public void setText(String text) {
        heading.setText(text);
        heading.setToolTipText(null);
        Texts.explained(heading);
    }
}
