package org.glintery.workbench.parts;

import java.util.function.BooleanSupplier;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.glintery.api.Stable;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.util.NbBundle.Messages;

/** Asks for something in a dialog of its own. Event thread; returns when the dialog is closed. */
@Stable
public final class Asking {
    private Asking() {}

    /** @param doIt the button's words, such as "Shelve the kit" @return whether that button was pressed */
    public static boolean ask(String title, JComponent form, String doIt) {
        return ask(title, form, doIt, () -> true);
    }

    /** @param ready asked when the button is pressed; while it says no the dialog stays */
    @Messages("Asking.leave=Leave it")
    public static boolean ask(String title, JComponent form, String doIt, BooleanSupplier ready) {
        JPanel sheet = new JPanel(new java.awt.BorderLayout());
        int px = Space.px(Space.SECTION);
        sheet.setBorder(BorderFactory.createEmptyBorder(px, px, px, px));
        sheet.add(form);
        var yes = Buttons.primary(doIt, () -> {});
        var no = Buttons.plain(Bundle.Asking_leave(), () -> {});
        DialogDescriptor descriptor = new DialogDescriptor(sheet, title);
        descriptor.setOptions(new Object[] {yes, no});
        descriptor.setClosingOptions(new Object[] {no});
        var dialog = DialogDisplayer.getDefault().createDialog(descriptor);
        boolean[] agreed = {false};
        yes.addActionListener(e -> {
            if (ready.getAsBoolean()) {
                agreed[0] = true;
                dialog.setVisible(false);
            }
        });
        if (dialog instanceof javax.swing.JDialog window) {
            window.getRootPane().setDefaultButton(yes);
        }
        dialog.setVisible(true);
        dialog.dispose();
        return agreed[0];
    }
}
