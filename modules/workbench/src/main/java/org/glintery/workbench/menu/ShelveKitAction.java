package org.glintery.workbench.menu;

import org.glintery.workbench.desk.WorkshopDesk;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.shelves.Entries;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** Shelve a kit. */
@ActionID(category = "Workshop", id = "org.glintery.workbench.menu.ShelveKitAction")
@ActionRegistration(displayName = "#ShelveKitAction.name", lazy = false)
@ActionReferences({
    @ActionReference(path = "Menu/Workshop", position = 50),
    @ActionReference(path = "Toolbars/Glintery", position = 300),
    @ActionReference(path = "Shortcuts", name = "D-N")
})
@Messages("ShelveKitAction.name=Shelve a kit")
public final class ShelveKitAction extends DeskAction {
    private static final long serialVersionUID = 1L;

    public ShelveKitAction() {
        super(Bundle.ShelveKitAction_name(), Pictogram.KIT);
    }

    @Override
    void act(WorkshopDesk desk) {
        Entries.newKit(desk);
    }
}
