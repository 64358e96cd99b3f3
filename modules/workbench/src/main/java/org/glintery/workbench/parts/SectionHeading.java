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
        super(new MigLayout("insets 0, fillx, gap " + Space.NEAR, "[grow]", "[]" + Space.TIGHT + "[]"));
        setOpaque(false);
        heading = Texts.heading(text);
        add(heading, "growx, split " + (1 + atTheRight.length));
        for (JComponent one : atTheRight) {
            add(one);
        }
        add(new JSeparator(), "newline, growx");
    }

    public void setText(String text) {
        heading.setText(text);
    }
}
