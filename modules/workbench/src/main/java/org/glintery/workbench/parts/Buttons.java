package org.glintery.workbench.parts;

import com.formdev.flatlaf.FlatClientProperties;
import javax.swing.Icon;
import javax.swing.JButton;
import org.glintery.api.Stable;
import org.glintery.workbench.words.Words;

/** Buttons of the theme. Event thread. */
@Stable
public final class Buttons {
    private static final int ICON_PX = 16;

    private Buttons() {}

    /** The one thing a screen is there for. */
    public static JButton primary(String text, Runnable action) {
        return Words.explain(acting(Texts.styled(new JButton(text), "primary"), action), text);
    }

    public static JButton plain(String text, Runnable action) {
        return Words.explain(acting(new JButton(text), action), text);
    }

    public static JButton plain(Pictogram icon, String text, Runnable action) {
        JButton button = plain(text, action);
        button.setIcon(icon.at(ICON_PX));
        return button;
    }

    /** Looks like a link: for what is beside the way. */
    public static JButton link(String text, Runnable action) {
        return acting(Texts.styled(new LinkButton(text), "link"), action);
    }

    /** Only an icon; the name is its tooltip and is read aloud. */
    public static JButton icon(Pictogram pictogram, String name, Runnable action) {
        Icon icon = pictogram.at(ICON_PX);
        JButton button = acting(new JButton(icon), action);
        button.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
        button.setToolTipText(name);
        button.getAccessibleContext().setAccessibleName(name);
        return button;
    }

    private static JButton acting(JButton button, Runnable action) {
        button.addActionListener(e -> action.run());
        return button;
    }
}
