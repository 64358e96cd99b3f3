package org.glintery.workbench.menu;

import org.glintery.workbench.desk.WorkshopDesk;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.start.Opening;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** Close workshop. */
@ActionID(category = "Workshop", id = "org.glintery.workbench.menu.CloseWorkshopAction")
@ActionRegistration(displayName = "#CloseWorkshopAction.name", lazy = false)
@ActionReference(path = "Menu/Workshop", position = 800, separatorBefore = 790)
@Messages("CloseWorkshopAction.name=Close workshop")
public final class CloseWorkshopAction extends DeskAction {
    private static final long serialVersionUID = 1L;

    public CloseWorkshopAction() {
        super(Bundle.CloseWorkshopAction_name(), Pictogram.CLOSE);
    }

    @Override
    void act(WorkshopDesk desk) {
        Opening.usual().closeCurrent();
    }
}
