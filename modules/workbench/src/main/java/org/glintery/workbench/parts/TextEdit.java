package org.glintery.workbench.parts;

import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import javax.swing.undo.UndoManager;
import org.glintery.api.Stable;

/**
 * Keeps what is typed when the field is left (in a one-line field also on Enter): one undo step for each leave, not
 * one a letter. Escape brings back what was kept. What the user is typing is never overwritten. Event thread.
 */
@Stable
public final class TextEdit {
    private final JTextComponent field;
    private final Consumer<String> keep;
    private final UndoManager typing = new UndoManager();
    private String kept = "";

    /** @param keep called with the new text when it differs from what was kept */
    public static TextEdit of(JTextComponent field, Consumer<String> keep) {
        return new TextEdit(field, keep);
    }

    private TextEdit(JTextComponent field, Consumer<String> keep) {
        this.field = field;
        this.keep = keep;
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                if (!e.isTemporary()) {
                    commit();
                }
            }
        });
        OpenEdits.join(field, this::commit);
        if (field instanceof JTextField line) {
            line.addActionListener(e -> commit());
        }
        field.getDocument().addUndoableEditListener(typing);
        key("ESCAPE", "bring-back", this::bringBack);
        key("control Z", "undo-typing", () -> {
            if (typing.canUndo()) {
                typing.undo();
            }
        });
    }

    /** Shows what is kept in the workshop, unless the user has typed something else since. */
    public void show(String text) {
        boolean untouched = field.getText().equals(kept);
        kept = text;
        if (untouched && !field.getText().equals(text)) {
            field.setText(text);
            field.setCaretPosition(0);
            typing.discardAllEdits();
        }
    }

    /** Keeps the text now. */
    public void commit() {
        String now = field.getText();
        if (!now.equals(kept)) {
            kept = now;
            typing.discardAllEdits();
            keep.accept(now);
        }
    }

    private void bringBack() {
        field.setText(kept);
        typing.discardAllEdits();
    }

    private void key(String stroke, String name, Runnable action) {
        field.getInputMap().put(KeyStroke.getKeyStroke(stroke), name);
        field.getActionMap().put(name, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                action.run();
            }
        });
    }
}
