package org.glintery.workbench.parts;

import java.awt.Component;
import java.awt.Container;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Stable;

/** A form: each label over its field, hints under it, generous room between. Event thread. */
@Stable
public final class FormSheet extends JPanel {
    private static final long serialVersionUID = 1L;
    private final int columns;

    /** One field to a line. */
    public FormSheet() {
        this(1);
    }

    /** @param columns fields side by side; {@link #wide} takes a whole line */
    public FormSheet(int columns) {
        super(new MigLayout(
                "insets 0, fillx, wrap " + columns + ", gapx " + Space.SECTION + ", gapy " + Space.APART,
                "[grow, fill, sg]"));
        this.columns = columns;
        setOpaque(false);
    }

    public FormSheet field(String label, JComponent field) {
        return field(label, field, "");
    }

    /** @param hint may be blank */
    public FormSheet field(String label, JComponent field, String hint) {
        add(labelled(label, field, hint), "wmin 0, growx, top");
        return this;
    }

    /** A field over the whole width. */
    public FormSheet wide(String label, JComponent field, String hint) {
        add(labelled(label, field, hint), "span " + columns + ", wmin 0, growx, top, newline");
        return this;
    }

    /** Anything over the whole width: a heading, a caution, a row of buttons. */
    public FormSheet whole(JComponent component) {
        add(component, "span " + columns + ", wmin 0, growx, newline");
        return this;
    }

    public FormSheet section(String heading) {
        add(new SectionHeading(heading), "span " + columns + ", growx, newline, gaptop " + Space.NEAR);
        return this;
    }

    private static JPanel labelled(String text, JComponent field, String hint) {
        JPanel cell = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy " + Space.TIGHT, "[grow, fill]"));
        cell.setOpaque(false);
        JLabel label = Texts.styled(new JLabel(text), "field");
        Component typed = typedInto(field);
        label.setLabelFor(typed);
        if (typed.getAccessibleContext() != null) {
            typed.getAccessibleContext().setAccessibleName(text);
            if (!hint.isBlank()) {
                typed.getAccessibleContext().setAccessibleDescription(hint);
            }
        }
        cell.add(label);
        cell.add(field, "wmin 0");
        if (!hint.isBlank()) {
            cell.add(Texts.wrappedHint(hint), "wmin 0");
        }
        return cell;
    }

    private static Component typedInto(Component field) {
        if (field instanceof AboutField about) {
            return about.field();
        }
        if (field instanceof Container container && !(field instanceof JTextComponent)) {
            for (Component child : container.getComponents()) {
                if (child instanceof JTextComponent) {
                    return child;
                }
                if (child instanceof javax.swing.JViewport view && view.getView() instanceof JTextComponent text) {
                    return text;
                }
            }
        }
        return field;
    }
}
