package org.glintery.workbench.menu;

import org.glintery.workbench.desk.WorkshopDesk;
import org.glintery.workbench.parts.Pictogram;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** Back up. */
@ActionID(category = "Workshop", id = "org.glintery.workbench.menu.BackupAction")
@ActionRegistration(displayName = "#BackupAction.name", lazy = false)
@ActionReference(path = "Menu/Workshop", position = 300, separatorBefore = 290)
@Messages("BackupAction.name=Back up")
public final class BackupAction extends DeskAction {
    private static final long serialVersionUID = 1L;

    public BackupAction() {
        super(Bundle.BackupAction_name(), Pictogram.BACKUP);
    }

    @Override
    void act(WorkshopDesk desk) {
        Backups.backUp(desk, () -> {});
    }
}
