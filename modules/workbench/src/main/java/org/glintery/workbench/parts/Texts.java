package org.glintery.workbench.parts;

import com.formdev.flatlaf.FlatClientProperties;
import javax.swing.JComponent;
import javax.swing.JLabel;
import org.glintery.api.Stable;
import org.glintery.workbench.words.Words;

/** Labels in the text sizes of the theme. They follow light, dark and the chosen text size. Event thread. */
@Stable
public final class Texts {
    private Texts() {}

    /** The title of a page, as on a gallery label. */
    public static JLabel title(String text) {
        return styled(new JLabel(text), "title");
    }

    /** Over a group of things. */
    public static JLabel heading(String text) {
        return styled(new JLabel(text), "heading");
    }

    /** A number or answer that is read at a glance. */
    public static JLabel figure(String text) {
        return styled(new JLabel(text), "figure");
    }

    /** One line of ordinary text. */
    public static JLabel line(String text) {
        return new JLabel(text);
    }

    /** One line of quieter text. */
    public static JLabel hint(String text) {
        return styled(new JLabel(text), "hint");
    }

    /** What went wrong. It begins with words that say so: colour alone says nothing. */
    public static JLabel trouble(String text) {
        return styled(new JLabel(text), "trouble");
    }

    /** Ordinary text that wraps at the width it is given. */
    public static WrappedText body(String text) {
        return styled(new WrappedText(text), "body");
    }

    /** Quieter text that wraps. */
    public static WrappedText wrappedHint(String text) {
        return styled(new WrappedText(text), "hint");
    }

    /** A heading that wraps. */
    public static WrappedText wrappedHeading(String text) {
        return styled(new WrappedText(text), "heading");
    }

    /** A title that wraps. */
    public static WrappedText wrappedTitle(String text) {
        return styled(new WrappedText(text), "title");
    }

    /** Gives a panel the ground and the border of a card. */
    public static <C extends JComponent> C asCard(C panel) {
        return styled(panel, "card");
    }

    /** Explains the words of the trade that stand on a label when the pointer rests on it; it keeps a tip it has. */
    public static <L extends JLabel> L explained(L label) {
        return Words.explain(label, label.getText());
    }

    static <C extends JComponent> C styled(C component, String styleClass) {
        component.putClientProperty(FlatClientProperties.STYLE_CLASS, styleClass);
        return component;
    }
}
