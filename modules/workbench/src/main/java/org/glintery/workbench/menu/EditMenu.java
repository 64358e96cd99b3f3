package org.glintery.workbench.menu;

import javax.swing.Action;
import org.glintery.workbench.parts.Pictogram;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** The Edit menu: undo and redo, with the sentence of the change. */
public final class EditMenu {
    private EditMenu() {}

    @ActionID(category = "Edit", id = "org.glintery.workbench.menu.UndoAction")
    @ActionRegistration(displayName = "#EditMenu.undo", lazy = false)
    @ActionReferences({
        @ActionReference(path = "Menu/Edit", position = 100),
        @ActionReference(path = "Toolbars/Glintery", position = 100),
        @ActionReference(path = "Shortcuts", name = "D-Z")
    })
    @Messages({
        "EditMenu.undo=Undo",
        "# {0} - sentence of the change",
        "EditMenu.undoWhat=Undo: {0}",
        "# {0} - sentence of the change",
        "EditMenu.undone=Undone: {0}"
    })
    public static Action undo() {
        return new ToldAction(
                Bundle.EditMenu_undo(),
                Pictogram.UNDO,
                workshop -> workshop.undoable().map(Bundle::EditMenu_undoWhat),
                desk -> {
                    String what = desk.workshop().undoable().orElse("");
                    desk.work(desk.workshop()::undo, applied -> desk.say(Bundle.EditMenu_undone(what)));
                });
    }

    @ActionID(category = "Edit", id = "org.glintery.workbench.menu.RedoAction")
    @ActionRegistration(displayName = "#EditMenu.redo", lazy = false)
    @ActionReferences({
        @ActionReference(path = "Menu/Edit", position = 110),
        @ActionReference(path = "Toolbars/Glintery", position = 110),
        @ActionReference(path = "Shortcuts", name = "DS-Z")
    })
    @Messages({
        "EditMenu.redo=Redo",
        "# {0} - sentence of the change",
        "EditMenu.redoWhat=Redo: {0}",
        "# {0} - sentence of the change",
        "EditMenu.redone=Done again: {0}"
    })
    public static Action redo() {
        return new ToldAction(
                Bundle.EditMenu_redo(),
                Pictogram.REDO,
                workshop -> workshop.redoable().map(Bundle::EditMenu_redoWhat),
                desk -> {
                    String what = desk.workshop().redoable().orElse("");
                    desk.work(desk.workshop()::redo, applied -> desk.say(Bundle.EditMenu_redone(what)));
                });
    }
}
