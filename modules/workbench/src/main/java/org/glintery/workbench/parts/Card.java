package org.glintery.workbench.parts;

import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Stable;

/** A sheet with a heading on the window's ground. Event thread. */
@Stable
public final class Card extends JPanel {
    private static final long serialVersionUID = 1L;

    public Card(String heading, JComponent contents) {
        super(new MigLayout("insets 0, fillx, wrap 1, gapy " + Space.APART, "[grow, fill]", "[][grow, fill]"));
        Texts.styled(this, "card");
        if (!heading.isBlank()) {
            add(Texts.explained(Texts.heading(heading)));
        }
        contents.setOpaque(false);
        add(contents, "wmin 0");
        getAccessibleContext().setAccessibleName(heading);
    }
}
