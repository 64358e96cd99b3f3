package org.glintery.selftest;

import java.awt.Container;
import java.awt.Dialog;
import java.awt.EventQueue;
import java.awt.Window;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JDialog;

/** The dialogs from the outside: opening one, looking at it, leaving it. */
final class Dialogs {
    private Dialogs() {}

    /** The dialog in front. Event thread. */
    static Optional<JDialog> inFront() {
        List<JDialog> showing = Arrays.stream(Window.getWindows())
                .filter(window -> window.isShowing() && window instanceof Dialog)
                .filter(JDialog.class::isInstance)
                .map(JDialog.class::cast)
                .toList();
        return showing.isEmpty() ? Optional.empty() : Optional.of(showing.get(showing.size() - 1));
    }

    /** Begins something that opens a dialog, and gives the dialog once it shows. */
    static JDialog open(String what, Runnable opening) {
        EventQueue.invokeLater(opening); // a dialog holds its opener up until it is left
        Screen.until(what + " to show a dialog", () -> inFront().isPresent());
        Screen.settle();
        return Screen.onEventThread(() -> inFront().orElseThrow());
    }

    /** Presses the button with these words, without waiting for what comes of it. */
    static void press(Container in, String words) {
        AbstractButton button = Screen.onEventThread(() -> button(in, words));
        EventQueue.invokeLater(button::doClick);
    }

    /** The button with these words, or with this name where it has no words. Event thread. */
    static AbstractButton button(Container in, String words) {
        return Screen.all(in, AbstractButton.class).stream()
                .filter(b -> words.equals(b.getText())
                        || words.equals(b.getAccessibleContext().getAccessibleName()))
                .filter(AbstractButton::isShowing)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button says: " + words));
    }

    static void leave(JDialog dialog) {
        Screen.onEventThread(() -> {
            dialog.setVisible(false);
            dialog.dispose();
            return null;
        });
        Screen.settle();
    }
}
