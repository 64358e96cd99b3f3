package org.glintery.workbench.parts;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** What is done when a key is pressed. Event thread. */
final class KeyPress extends AbstractAction {
    private static final long serialVersionUID = 1L;
    private final transient Runnable action;

    private KeyPress(Runnable action) {
        this.action = action;
    }

    /** Does something when a key is pressed while the component has the focus. */
    static void on(JComponent component, String stroke, Runnable action) {
        component.getInputMap().put(KeyStroke.getKeyStroke(stroke), stroke);
        component.getActionMap().put(stroke, new KeyPress(action));
    }

    @Override
    public void actionPerformed(ActionEvent e) {
        action.run();
    }
}
