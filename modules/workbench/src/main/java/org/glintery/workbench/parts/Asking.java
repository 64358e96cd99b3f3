package org.glintery.workbench.parts;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dialog;
import java.awt.Dimension;
import java.awt.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.glintery.api.Stable;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.util.NbBundle.Messages;
import org.openide.util.Utilities;

/** Asks for something in a dialog of its own. Event thread; returns when the dialog is closed. */
@Stable
public final class Asking {
    private static final int MOST_TURNS = 6;
    /** What a dialog has above and below its form, and the screen round it. */
    private static final int ROUND_A_FORM_PX = 120;

    private Asking() {}

    /** A form that is taller than the screen scrolls, up and down alone. */
    static JComponent shown(JComponent sheet) {
        Dimension size = sheet.getPreferredSize();
        int most = Utilities.getUsableScreenBounds().height - Space.px(ROUND_A_FORM_PX);
        if (size.height <= most) {
            return sheet;
        }
        PageScroll scroll = new PageScroll(sheet);
        int bar = scroll.getVerticalScrollBar().getPreferredSize().width;
        scroll.setPreferredSize(new Dimension(size.width + bar, most));
        return scroll;
    }

    /** Gives the dialog the size that its form wants now. */
    public static void fit(JComponent form) {
        Window window = SwingUtilities.getWindowAncestor(form);
        if (window != null) {
            settle(window);
        }
    }

    /** Once it is shown: columns that had no room at first have found it by then. */
    private static void rest(Dialog dialog) {
        Dimension before = dialog.getSize();
        settle(dialog);
        if (!dialog.getSize().equals(before)) {
            dialog.setLocationRelativeTo(dialog.getOwner());
        }
    }

    /** Text that wraps knows its height only after its width, so a window in which some is nested is packed until it rests. */
    private static void settle(Window window) {
        Dimension before;
        int turns = 0;
        do {
            before = window.getSize();
            window.pack();
        } while (!window.getSize().equals(before) && ++turns < MOST_TURNS);
    }

    /**
     * Text that was never laid out wants a line for each word, and what looks taller than the screen is put into a frame of
     * its own for good: so the form is laid out before its dialog sees it.
     */
    static void layOut(JComponent sheet) {
        Dimension before;
        int turns = 0;
        do {
            before = sheet.getSize();
            sheet.setSize(sheet.getPreferredSize());
            layOutAll(sheet);
        } while (!sheet.getSize().equals(before) && ++turns < MOST_TURNS);
    }

    private static void layOutAll(Container container) {
        container.invalidate();
        container.doLayout();
        for (Component child : container.getComponents()) {
            if (child instanceof Container inside) {
                layOutAll(inside);
            }
        }
    }

    /** @param doIt the button's words, such as "Shelve the kit" @return whether that button was pressed */
    public static boolean ask(String title, JComponent form, String doIt) {
        return ask(title, form, doIt, () -> true);
    }

    /** @param ready asked when the button is pressed; while it says no the dialog stays */
    @Messages("Asking.leave=Cancel")
    public static boolean ask(String title, JComponent form, String doIt, BooleanSupplier ready) {
        return choose(title, form, ready, Bundle.Asking_leave(), doIt).isPresent();
    }

    /**
     * @param ready asked when one of the ways is chosen; while it says no the dialog stays
     * @param leave the button that chooses nothing, as Escape does
     * @param ways buttons, the likeliest first @return which of the ways was chosen, from 0
     */
    public static OptionalInt choose(
            String title, JComponent form, BooleanSupplier ready, String leave, String... ways) {
        JPanel sheet = new JPanel(new BorderLayout());
        sheet.setBorder(Space.around(Space.SECTION));
        sheet.add(form);
        layOut(sheet);
        JComponent shown = shown(sheet);
        int[] chosen = {-1};
        Dialog[] dialog = new Dialog[1];
        List<JButton> buttons = new ArrayList<>();
        for (int i = 0; i < ways.length; i++) {
            int way = i;
            Runnable take = () -> {
                if (ready.getAsBoolean()) {
                    chosen[0] = way;
                    dialog[0].setVisible(false);
                } else { // what it says now may need more room
                    settle(dialog[0]);
                }
            };
            buttons.add(i == 0 ? Buttons.primary(ways[i], take) : Buttons.plain(ways[i], take));
        }
        JButton none = Buttons.plain(leave, () -> {});
        buttons.add(none);
        DialogDescriptor descriptor = new DialogDescriptor(shown, title);
        descriptor.setOptions(buttons.toArray());
        descriptor.setClosingOptions(new Object[] {none});
        dialog[0] = DialogDisplayer.getDefault().createDialog(descriptor);
        if (dialog[0] instanceof JDialog window) {
            window.getRootPane().setDefaultButton(buttons.get(0));
        }
        settle(dialog[0]);
        SwingUtilities.invokeLater(() -> rest(dialog[0]));
        dialog[0].setVisible(true);
        dialog[0].dispose();
        return chosen[0] < 0 ? OptionalInt.empty() : OptionalInt.of(chosen[0]);
    }
}
