package org.glintery.selftest;

import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.accessibility.AccessibleContext;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.table.JTableHeader;
import javax.swing.text.JTextComponent;

/** Whether what a window shows can be read, by eye and aloud. Event thread. */
final class Reading {
    private static final int SLACK_PX = 2;
    private static final int LEAST_FIELD_PX = 40;

    private Reading() {}

    /** Labels and buttons whose words are cut off, and fields too narrow to type in. */
    static List<String> cutOff(Container in) {
        List<String> cut = new ArrayList<>();
        for (JComponent one : Screen.all(in, JComponent.class)) {
            if (one.isShowing() && isOurs(one) && (isSqueezed(one) || sticksOut(one))) {
                cut.add(describe(one) + " has " + one.getBounds() + ", wants " + one.getPreferredSize().width);
            }
        }
        return cut;
    }

    /** Components that take the keyboard but say nothing to who does not see them. */
    static List<String> nameless(Container in) {
        List<String> nameless = new ArrayList<>();
        for (JComponent one : Screen.all(in, JComponent.class)) {
            AccessibleContext context = one.getAccessibleContext();
            if (takesKeys(one) && isOurs(one) && (context == null || isBlank(context.getAccessibleName()))) {
                nameless.add(describe(one));
            }
        }
        return nameless;
    }

    /** What stands on the labels, buttons, column heads and tabs whose words are explained where the pointer rests. */
    static Set<String> explained(Container in) {
        Set<String> explained = new TreeSet<>();
        for (JComponent one : Screen.all(in, JComponent.class)) {
            if (one instanceof JTableHeader head) {
                explainedHeads(head).forEach(explained::add);
            } else if (one instanceof JTabbedPane tabs) {
                IntStream.range(0, tabs.getTabCount())
                        .filter(tab -> isExplained(tabs.getToolTipTextAt(tab)))
                        .forEach(tab -> explained.add(tabs.getTitleAt(tab)));
            } else if (one.isShowing() && isExplained(one.getToolTipText())) {
                explained.add(words(one));
            }
        }
        return explained;
    }

    private static Stream<String> explainedHeads(JTableHeader head) {
        return IntStream.range(0, head.getColumnModel().getColumnCount())
                .filter(column -> {
                    Rectangle place = head.getHeaderRect(column);
                    MouseEvent over = new MouseEvent(
                            head, MouseEvent.MOUSE_MOVED, 0, 0, place.x + place.width / 2, place.y + 1, 0, false);
                    return isExplained(head.getToolTipText(over));
                })
                .mapToObj(column ->
                        String.valueOf(head.getColumnModel().getColumn(column).getHeaderValue()));
    }

    private static boolean isExplained(String tip) {
        return tip != null && tip.contains("</b>: ");
    }

    private static String words(JComponent one) {
        return one instanceof JLabel label
                ? label.getText()
                : one instanceof AbstractButton button
                        ? button.getText()
                        : one instanceof JTextComponent text ? text.getText() : describe(one);
    }

    private static boolean takesKeys(JComponent one) {
        return one.isShowing()
                && one.isEnabled()
                && one.isFocusable()
                && (one instanceof AbstractButton
                        || one instanceof JTextComponent
                        || one instanceof javax.swing.JComboBox
                        || one instanceof javax.swing.JList
                        || one instanceof javax.swing.JTable
                        || one.getClass().getName().startsWith("org.glintery."))
                && !(one instanceof JTabbedPane || one instanceof JPanel || one instanceof JScrollPane);
    }

    private static boolean isSqueezed(JComponent one) {
        if (one instanceof JLabel label) {
            return !isBlank(label.getText()) && one.getWidth() < one.getPreferredSize().width - SLACK_PX;
        }
        if (one instanceof AbstractButton button) {
            return !isBlank(button.getText()) && one.getWidth() < one.getPreferredSize().width - SLACK_PX;
        }
        return one instanceof JTextComponent field && field.isEditable() && one.getWidth() < LEAST_FIELD_PX;
    }

    /** Whether it reaches over the right edge of what holds it, where nothing scrolls sideways. */
    private static boolean sticksOut(JComponent one) {
        if (!(one instanceof JLabel || one instanceof AbstractButton || one instanceof JTextComponent)) {
            return false;
        }
        for (Container holder = one.getParent(); holder != null; holder = holder.getParent()) {
            if (holder instanceof JScrollPane pane
                    && pane.getHorizontalScrollBar().isVisible()) {
                return false;
            }
            Rectangle inHolder = SwingUtilities.convertRectangle(one.getParent(), one.getBounds(), holder);
            if (inHolder.x + inHolder.width > holder.getWidth() + SLACK_PX && !(holder instanceof JViewport)) {
                return true;
            }
        }
        return false;
    }

    /** What the platform draws for itself, such as the tabs of its windows, is its own business. */
    private static boolean isOurs(Component one) {
        for (Component c = one; c != null; c = c.getParent()) {
            if (c instanceof JScrollBar
                    || c.getClass().getName().startsWith("org.netbeans.core.windows.view.ui.toolbars")) {
                return false;
            }
        }
        return true;
    }

    private static boolean isBlank(String text) {
        return text == null || text.isBlank();
    }

    private static String describe(JComponent one) {
        String words = one instanceof JLabel label
                ? label.getText()
                : one instanceof AbstractButton button ? button.getText() : "";
        AccessibleContext context = one.getAccessibleContext();
        String name = context == null ? "" : context.getAccessibleName();
        Component inside = one.getParent();
        return one.getClass().getSimpleName() + " \"" + (isBlank(words) ? name : words) + "\" in "
                + (inside == null ? "" : inside.getClass().getSimpleName());
    }
}
