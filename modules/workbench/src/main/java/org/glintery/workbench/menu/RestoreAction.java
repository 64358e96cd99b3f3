package org.glintery.workbench.menu;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.start.Opening;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** Restore a backup into a new folder. */
@ActionID(category = "Workshop", id = "org.glintery.workbench.menu.RestoreAction")
@ActionRegistration(displayName = "#RestoreAction.name", lazy = false)
@ActionReference(path = "Menu/Workshop", position = 400)
@Messages({
    "RestoreAction.name=Restore a backup into a new folder",
    "RestoreAction.backup=Choose the backup",
    "RestoreAction.folder=Restore into this empty folder"
})
public final class RestoreAction extends AbstractAction {
    private static final long serialVersionUID = 1L;

    public RestoreAction() {
        super(Bundle.RestoreAction_name());
        putValue(Action.SMALL_ICON, Pictogram.RESTORE.at(16));
        putValue(Action.LARGE_ICON_KEY, Pictogram.RESTORE.at(24));
    }

    @Override
    public void actionPerformed(ActionEvent e) {
        Files.open(Bundle.RestoreAction_backup())
                .ifPresent(backup -> Files.folder(Bundle.RestoreAction_folder())
                        .ifPresent(folder -> Opening.usual().restore(backup, folder)));
    }
}
