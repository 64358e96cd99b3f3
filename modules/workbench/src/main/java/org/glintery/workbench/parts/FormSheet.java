package org.glintery.workbench.parts;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Stable;
import org.glintery.workbench.words.Words;

/**
 * A form: each label over its field, hints under it, generous room between. Fields stand side by side where there is
 * room, else below each other. Event thread.
 */
@Stable
public final class FormSheet extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int LEAST_COLUMN_PX = 190;
    private final Columns fields;

    /** One field to a line. */
    public FormSheet() {
        this(1);
    }

    /** @param columns fields side by side at the most; {@link #wide} takes a whole line */
    public FormSheet(int columns) {
        super(new BorderLayout());
        setOpaque(false);
        fields = new Columns(columns, LEAST_COLUMN_PX, Space.APART);
        add(fields);
    }

    public FormSheet field(String label, JComponent field) {
        return field(label, field, "");
    }

    /** @param hint may be blank */
    public FormSheet field(String label, JComponent field, String hint) {
        fields.one(labelled(label, field, hint));
        return this;
    }

    /** A field over the whole width. */
    public FormSheet wide(String label, JComponent field, String hint) {
        fields.whole(labelled(label, field, hint), "");
        return this;
    }

    /** Anything over the whole width: a heading, a caution, a row of buttons. */
    public FormSheet whole(JComponent component) {
        fields.whole(component, "");
        return this;
    }

    public FormSheet section(String heading) {
        fields.whole(new SectionHeading(heading), "gaptop " + Space.NEAR);
        return this;
    }

    private static JPanel labelled(String text, JComponent field, String hint) {
        JPanel cell = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy " + Space.TIGHT, "[grow, fill]"));
        cell.setOpaque(false);
        WrappedText label = Words.explain(Texts.styled(new WrappedText(text), "field"), text);
        if (field instanceof JComboBox<?> box && box.isEditable()) {
            name(box, text, hint); // first: with its name it gives its own to the field in it
            // another look and feel, or another size, brings another field to type in
            box.addPropertyChangeListener("editor", e -> name(typedInto(box), text, hint));
        }
        name(typedInto(field), text, hint);
        cell.add(label, "wmin 0");
        cell.add(field, "wmin 0");
        if (!hint.isBlank()) {
            cell.add(Texts.wrappedHint(hint), "wmin 0");
        }
        return cell;
    }

    private static void name(Component typed, String text, String hint) {
        if (typed.getAccessibleContext() != null) {
            typed.getAccessibleContext().setAccessibleName(text);
            if (!hint.isBlank()) {
                typed.getAccessibleContext().setAccessibleDescription(hint);
            }
        }
    }

    private static Component typedInto(Component field) {
        if (field instanceof AboutField about) {
            return about.field();
        }
        if (field instanceof JComboBox<?> box && box.isEditable() && box.getEditor() != null) {
            return box.getEditor().getEditorComponent();
        }
        if (field instanceof JSpinner spinner && spinner.getEditor() instanceof JSpinner.DefaultEditor editor) {
            return editor.getTextField();
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
