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

/** Redo, with the sentence of the change. */
@ActionID(category = "Edit", id = "org.glintery.workbench.menu.RedoAction")
@ActionRegistration(displayName = "#RedoAction.name", lazy = false)
@ActionReferences({
    @ActionReference(path = "Menu/Edit", position = 110),
    @ActionReference(path = "Toolbars/Glintery", position = 110),
    @ActionReference(path = "Shortcuts", name = "DS-Z")
})
@Messages({
    "RedoAction.name=Redo",
    "# {0} - sentence of the change",
    "RedoAction.what=Redo: {0}",
    "RedoAction.done=Redo: done"
})
public final class RedoAction extends HistoryAction {
    private static final long serialVersionUID = 1L;

    public RedoAction() {
        super(Bundle.RedoAction_name(), Pictogram.REDO);
    }

    @Override
    Optional<String> sentence(Workshop workshop) {
        return workshop.redoable();
    }

    @Override
    String name(Optional<String> sentence) {
        return sentence.map(Bundle::RedoAction_what).orElseGet(Bundle::RedoAction_name);
    }

    @Override
    void act(WorkshopDesk desk) {
        desk.work(() -> desk.workshop().redo(), applied -> desk.say(Bundle.RedoAction_done()));
    }
}
