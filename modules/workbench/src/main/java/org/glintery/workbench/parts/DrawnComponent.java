package org.glintery.workbench.parts;

import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import org.glintery.api.Stable;

/** A component that paints itself, with a role by which it is read aloud. Event thread. */
@Stable
public abstract class DrawnComponent extends JComponent {
    private static final long serialVersionUID = 1L;
    private final transient AccessibleRole role;

    /** @param role what it is to whoever does not see it; its name is for the subclass to set */
    protected DrawnComponent(AccessibleRole role) {
        this.role = role;
    }

    /** Does something when a key is pressed while this has the focus. @param stroke as {@link javax.swing.KeyStroke} reads it */
    protected final void onKey(String stroke, Runnable action) {
        KeyPress.on(this, stroke, action);
    }

    /** Paints anew when the focus comes and goes, for whoever draws it. */
    protected final void repaintOnFocus() {
        addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent e) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaint();
            }
        });
    }

    @Override
    public final AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return role;
                }
            };
        }
        return accessibleContext;
    }
}
