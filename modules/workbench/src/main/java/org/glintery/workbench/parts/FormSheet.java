package org.glintery.workbench.parts;

import java.awt.Component;
import java.awt.Container;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Stable;

/**
 * A form: each label over its field, hints under it, generous room between. Fields stand side by side where there is
 * room, else below each other. Event thread.
 */
@Stable
public final class FormSheet extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int LEAST_COLUMN_PX = 190;
    private static final String ONE = "wmin 0, growx, top";
    private static final String WHOLE = "span, wmin 0, growx, top, newline";
    private final int mostColumns;
    private int columns;

    /** One field to a line. */
    public FormSheet() {
        this(1);
    }

    /** @param columns fields side by side at the most; {@link #wide} takes a whole line */
    public FormSheet(int columns) {
        super(layout(columns));
        this.mostColumns = columns;
        this.columns = columns;
        setOpaque(false);
    }

    public FormSheet field(String label, JComponent field) {
        return field(label, field, "");
    }

    /** @param hint may be blank */
    public FormSheet field(String label, JComponent field, String hint) {
        add(labelled(label, field, hint), ONE);
        return this;
    }

    /** A field over the whole width. */
    public FormSheet wide(String label, JComponent field, String hint) {
        add(labelled(label, field, hint), WHOLE);
        return this;
    }

    /** Anything over the whole width: a heading, a caution, a row of buttons. */
    public FormSheet whole(JComponent component) {
        add(component, WHOLE);
        return this;
    }

    public FormSheet section(String heading) {
        add(new SectionHeading(heading), WHOLE + ", gaptop " + Space.NEAR);
        return this;
    }

    private static MigLayout layout(int columns) {
        return new MigLayout(
                "insets 0, fillx, hidemode 3, wrap " + columns + ", gapx " + Space.SECTION + ", gapy " + Space.APART,
                "[grow, fill, sg]".repeat(columns));
    }

    /** Gives up columns that would be too narrow to type in. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        int room = (width + Space.px(Space.SECTION)) / Space.px(LEAST_COLUMN_PX + Space.SECTION);
        int fit = Math.max(1, Math.min(mostColumns, room));
        if (width > 0 && fit != columns) {
            columns = fit;
            SwingUtilities.invokeLater(this::arrangeAnew);
        }
    }

    private void arrangeAnew() {
        MigLayout old = (MigLayout) getLayout();
        MigLayout now = layout(columns);
        for (Component one : getComponents()) {
            now.addLayoutComponent(one, old.getComponentConstraints(one));
        }
        setLayout(now);
        revalidate();
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
