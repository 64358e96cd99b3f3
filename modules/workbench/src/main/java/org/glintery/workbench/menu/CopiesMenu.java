package org.glintery.workbench.menu;

import javax.swing.Action;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.start.Opening;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** Copies of the workshop in the Workshop menu: backing up, restoring, exporting, importing, checking. */
public final class CopiesMenu {
    private CopiesMenu() {}

    @ActionID(category = "Workshop", id = "org.glintery.workbench.menu.BackupAction")
    @ActionRegistration(displayName = "#CopiesMenu.backUp", lazy = false)
    @ActionReference(path = "Menu/Workshop", position = 300, separatorBefore = 290)
    @Messages("CopiesMenu.backUp=Back up")
    public static Action backUp() {
        return new DeskAction(Bundle.CopiesMenu_backUp(), Pictogram.BACKUP, Copies::backUp);
    }

    @ActionID(category = "Workshop", id = "org.glintery.workbench.menu.RestoreAction")
    @ActionRegistration(displayName = "#CopiesMenu.restore", lazy = false)
    @ActionReference(path = "Menu/Workshop", position = 400)
    @Messages({
        "CopiesMenu.restore=Restore a backup into a new folder",
        "CopiesMenu.choose=Choose the backup",
        "CopiesMenu.into=Restore into this empty folder"
    })
    public static Action restore() {
        return new PlainAction(
                Bundle.CopiesMenu_restore(),
                Pictogram.RESTORE,
                () -> Files.open(Bundle.CopiesMenu_choose())
                        .ifPresent(backup -> Files.folder(Bundle.CopiesMenu_into())
                                .ifPresent(folder -> Opening.usual().restore(backup, folder))));
    }

    @ActionID(category = "Workshop", id = "org.glintery.workbench.menu.ExportAction")
    @ActionRegistration(displayName = "#CopiesMenu.export", lazy = false)
    @ActionReference(path = "Menu/Workshop", position = 500, separatorBefore = 490)
    @Messages("CopiesMenu.export=Export all")
    public static Action export() {
        return new DeskAction(Bundle.CopiesMenu_export(), Pictogram.EXPORT, Copies::export);
    }

    @ActionID(category = "Workshop", id = "org.glintery.workbench.menu.ExportTablesAction")
    @ActionRegistration(displayName = "#CopiesMenu.exportTables", lazy = false)
    @ActionReference(path = "Menu/Workshop", position = 550)
    @Messages("CopiesMenu.exportTables=Export all as tables for a spreadsheet")
    public static Action exportTables() {
        return new DeskAction(Bundle.CopiesMenu_exportTables(), Pictogram.EXPORT, Copies::exportTables);
    }

    @ActionID(category = "Workshop", id = "org.glintery.workbench.menu.ImportAction")
    @ActionRegistration(displayName = "#CopiesMenu.takeIn", lazy = false)
    @ActionReference(path = "Menu/Workshop", position = 600)
    @Messages("CopiesMenu.takeIn=Import into this empty workshop")
    public static Action takeIn() {
        return new DeskAction(Bundle.CopiesMenu_takeIn(), Pictogram.IMPORT, Copies::takeIn);
    }

    @ActionID(category = "Workshop", id = "org.glintery.workbench.menu.CheckAction")
    @ActionRegistration(displayName = "#CopiesMenu.check", lazy = false)
    @ActionReference(path = "Menu/Workshop", position = 700, separatorBefore = 690)
    @Messages("CopiesMenu.check=Check the workshop")
    public static Action check() {
        return new DeskAction(Bundle.CopiesMenu_check(), Pictogram.CHECK, Copies::check);
    }
}
