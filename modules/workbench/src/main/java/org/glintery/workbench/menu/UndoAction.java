package org.glintery.workbench.menu;

import java.util.Optional;
import org.glintery.api.workshop.Workshop;
import org.glintery.workbench.desk.WorkshopDesk;
import org.glintery.workbench.parts.Pictogram;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** Undo, with the sentence of the change. */
@ActionID(category = "Edit", id = "org.glintery.workbench.menu.UndoAction")
@ActionRegistration(displayName = "#UndoAction.name", lazy = false)
@ActionReferences({
    @ActionReference(path = "Menu/Edit", position = 100),
    @ActionReference(path = "Toolbars/Glintery", position = 100),
    @ActionReference(path = "Shortcuts", name = "D-Z")
})
@Messages({
    "UndoAction.name=Undo",
    "# {0} - sentence of the change",
    "UndoAction.what=Undo: {0}",
    "UndoAction.done=Undo: done"
})
public final class UndoAction extends HistoryAction {
    private static final long serialVersionUID = 1L;

    public UndoAction() {
        super(Bundle.UndoAction_name(), Pictogram.UNDO);
    }

    @Override
    Optional<String> sentence(Workshop workshop) {
        return workshop.undoable();
    }

    @Override
    String name(Optional<String> sentence) {
        return sentence.map(Bundle::UndoAction_what).orElseGet(Bundle::UndoAction_name);
    }

    @Override
    void act(WorkshopDesk desk) {
        desk.work(() -> desk.workshop().undo(), applied -> desk.say(Bundle.UndoAction_done()));
    }
}
