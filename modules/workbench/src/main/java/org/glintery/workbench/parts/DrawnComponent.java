package org.glintery.workbench.parts;

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
