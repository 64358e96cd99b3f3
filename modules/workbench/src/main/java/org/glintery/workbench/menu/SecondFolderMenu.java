package org.glintery.workbench.menu;

import javax.swing.Action;
import org.glintery.workbench.copies.CopyNews;
import org.glintery.workbench.copies.FolderCopying;
import org.glintery.workbench.desk.CurrentDesk;
import org.glintery.workbench.desk.WorkshopDesk;
import org.glintery.workbench.parts.OpenDesk;
import org.glintery.workbench.parts.Pictogram;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** The folder that the workshop is copied into by itself, in the Workshop menu. */
public final class SecondFolderMenu {
    private SecondFolderMenu() {}

    /** Asks for the folder; from the menu and from Today. Event thread. */
    @Messages("SecondFolderMenu.title=Copy into this folder")
    public static void choose(WorkshopDesk desk) {
        Files.folder(Bundle.SecondFolderMenu_title())
                .ifPresent(folder -> FolderCopying.at(desk).choose(folder));
    }

    @ActionID(category = "Workshop", id = "org.glintery.workbench.menu.SecondFolderAction")
    @ActionRegistration(displayName = "#SecondFolderMenu.choose", lazy = false)
    @ActionReference(path = "Menu/Workshop", position = 320)
    @Messages("SecondFolderMenu.choose=Copy into a second folder by itself")
    public static Action chooseFolder() {
        return new DeskAction(Bundle.SecondFolderMenu_choose(), Pictogram.PLACE, SecondFolderMenu::choose);
    }

    @ActionID(category = "Workshop", id = "org.glintery.workbench.menu.StopCopyingAction")
    @ActionRegistration(displayName = "#SecondFolderMenu.stop", lazy = false)
    @ActionReference(path = "Menu/Workshop", position = 340)
    @Messages("SecondFolderMenu.stop=Stop copying into the second folder")
    public static Action stopCopying() {
        return new StopAction();
    }

    /** It rests while no folder is chosen. Event thread. */
    private static final class StopAction extends PlainAction {
        private static final long serialVersionUID = 1L;

        StopAction() {
            super(
                    Bundle.SecondFolderMenu_stop(),
                    Pictogram.CLOSE,
                    () -> CurrentDesk.get()
                            .desk()
                            .ifPresent(desk -> FolderCopying.at(desk).stop()));
            OpenDesk.get().listen(desk -> follow());
            CopyNews.listen(this::follow);
            follow();
        }

        private void follow() {
            setEnabled(CurrentDesk.get()
                    .desk()
                    .filter(desk -> FolderCopying.at(desk).isChosen())
                    .isPresent());
        }
    }
}
