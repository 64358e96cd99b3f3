package org.glintery.workbench.menu;

import org.glintery.workbench.desk.WorkshopDesk;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.shelves.Entries;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** Write an old finish. */
@ActionID(category = "Workshop", id = "org.glintery.workbench.menu.OldFinishAction")
@ActionRegistration(displayName = "#OldFinishAction.name", lazy = false)
@ActionReferences({
    @ActionReference(path = "Menu/Workshop", position = 60),
    @ActionReference(path = "Toolbars/Glintery", position = 310)
})
@Messages("OldFinishAction.name=Write an old finish")
public final class OldFinishAction extends DeskAction {
    private static final long serialVersionUID = 1L;

    public OldFinishAction() {
        super(Bundle.OldFinishAction_name(), Pictogram.FINISH);
    }

    @Override
    void act(WorkshopDesk desk) {
        Entries.oldFinish(desk);
    }
}
