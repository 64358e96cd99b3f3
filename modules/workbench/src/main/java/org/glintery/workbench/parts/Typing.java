package org.glintery.workbench.parts;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;
import org.glintery.api.Stable;

/** Calls back at each change of a text field. Event thread. */
@Stable
public final class Typing implements DocumentListener {
    private final Runnable typed;

    private Typing(Runnable typed) {
        this.typed = typed;
    }

    public static void into(JTextComponent field, Runnable typed) {
        field.getDocument().addDocumentListener(new Typing(typed));
    }

    @Override
    public void insertUpdate(DocumentEvent e) {
        typed.run();
    }

    @Override
    public void removeUpdate(DocumentEvent e) {
        typed.run();
    }

    @Override
    public void changedUpdate(DocumentEvent e) {
        typed.run();
    }
}
