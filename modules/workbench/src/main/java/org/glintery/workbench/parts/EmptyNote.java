package org.glintery.workbench.parts;

import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Stable;

/** What to do first, where there is nothing to show yet. Event thread. */
@Stable
public final class EmptyNote extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int ICON_PX = 32;
    private static final int WIDTH_PX = 380;

    /** @param ways the first is what most people want */
    public EmptyNote(Pictogram icon, String heading, String text, JButton... ways) {
        super(new MigLayout("insets " + Space.SECTION + ", fill", "[grow, center]", "[grow, center]"));
        setOpaque(false);
        JPanel middle = new JPanel(new MigLayout("insets 0, wrap 1, gapy " + Space.NEAR, "[grow, center]"));
        middle.setOpaque(false);
        middle.add(new JLabel(icon.at(ICON_PX)));
        middle.add(Texts.heading(heading));
        middle.add(Texts.wrappedHint(text), "growx, wmin 0, wmax " + Space.px(WIDTH_PX));
        for (int i = 0; i < ways.length; i++) {
            if (i == 0) {
                Texts.styled(ways[i], "primary");
            }
            middle.add(ways[i], i == 0 ? "gaptop " + Space.NEAR : "");
        }
        add(middle, "wmin 0, wmax " + Space.px(WIDTH_PX));
        getAccessibleContext().setAccessibleName(heading);
    }
}
