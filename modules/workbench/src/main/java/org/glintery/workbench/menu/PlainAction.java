package org.glintery.workbench.menu;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import org.glintery.workbench.parts.Pictogram;

/** An entry of a menu with its icon. Event thread. */
class PlainAction extends AbstractAction {
    private static final long serialVersionUID = 1L;
    private static final int SMALL_PX = 16;
    private static final int LARGE_PX = 24;
    private final transient Runnable act;

    PlainAction(String name, Pictogram icon, Runnable act) {
        super(name);
        this.act = act;
        putValue(Action.SHORT_DESCRIPTION, name);
        putValue(Action.SMALL_ICON, icon.at(SMALL_PX));
        putValue(Action.LARGE_ICON_KEY, icon.at(LARGE_PX));
    }

    @Override
    public void actionPerformed(ActionEvent e) {
        act.run();
    }
}
