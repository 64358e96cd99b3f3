package org.glintery.workbench.parts;

import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Stable;

/** A short word of caution in place. Its sign says so as well as its ground. Event thread. */
@Stable
public final class Caution extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int ICON_PX = 24;

    public Caution(String text) {
        super(new MigLayout("insets 0, fillx, gap " + Space.APART, "[][grow, fill]"));
        Texts.styled(this, "caution");
        add(new JLabel(Pictogram.WARNING.at(ICON_PX, Tone.CAUTION)), "top");
        add(Texts.body(text), "wmin 0");
        getAccessibleContext().setAccessibleName(text);
    }
}
