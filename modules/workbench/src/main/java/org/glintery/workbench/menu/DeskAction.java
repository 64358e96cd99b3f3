package org.glintery.workbench.menu;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import org.glintery.workbench.desk.CurrentDesk;
import org.glintery.workbench.desk.WorkshopDesk;
import org.glintery.workbench.parts.OpenDesk;
import org.glintery.workbench.parts.Pictogram;

/** An action at the open workshop; it can't be used while none is open. Event thread. */
abstract class DeskAction extends AbstractAction {
    private static final long serialVersionUID = 1L;
    private static final int SMALL_PX = 16;
    private static final int LARGE_PX = 24;

    DeskAction(String name, Pictogram icon) {
        super(name);
        putValue(Action.SMALL_ICON, icon.at(SMALL_PX));
        putValue(Action.LARGE_ICON_KEY, icon.at(LARGE_PX));
        OpenDesk.get().listen(desk -> setEnabled(desk.isPresent()));
        setEnabled(OpenDesk.get().current().isPresent());
    }

    abstract void act(WorkshopDesk desk);

    @Override
    public void actionPerformed(ActionEvent e) {
        CurrentDesk.get().desk().ifPresent(this::act);
    }
}
