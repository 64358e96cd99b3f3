package org.glintery.workbench.parts;

import java.awt.event.ActionEvent;
import javax.swing.Action;
import org.glintery.api.Stable;
import org.openide.awt.Actions;

/** Does what an entry of the menu does, from a button elsewhere. Event thread. */
@Stable
public final class MenuActions {
    private MenuActions() {}

    /** @param name the simple class name of an action of the workbench's menus */
    public static void run(String category, String name) {
        Action action = Actions.forID(category, "org.glintery.workbench.menu." + name);
        action.actionPerformed(new ActionEvent(action, ActionEvent.ACTION_PERFORMED, name));
    }
}
