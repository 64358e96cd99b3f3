package org.glintery.workbench.menu;

import org.glintery.api.Result;
import org.glintery.api.workshop.Workshop.CopyReport;
import org.glintery.workbench.desk.WorkshopDesk;
import org.glintery.workbench.parts.Pictogram;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** Import into this empty workshop. */
@ActionID(category = "Workshop", id = "org.glintery.workbench.menu.ImportAction")
@ActionRegistration(displayName = "#ImportAction.name", lazy = false)
@ActionReference(path = "Menu/Workshop", position = 600)
@Messages({
    "ImportAction.name=Import into this empty workshop",
    "ImportAction.title=Import an export",
    "# {0} - file",
    "# {1} - documents",
    "ImportAction.done=Taken in from {0}: {1} documents."
})
public final class ImportAction extends DeskAction {
    private static final long serialVersionUID = 1L;

    public ImportAction() {
        super(Bundle.ImportAction_name(), Pictogram.IMPORT);
    }

    @Override
    void act(WorkshopDesk desk) {
        Files.open(Bundle.ImportAction_title())
                .ifPresent(file -> desk.compute(view -> desk.workshop().importJson(file), result -> {
                    if (result instanceof Result.Ok<CopyReport> ok) {
                        desk.say(Bundle.ImportAction_done(
                                file.getFileName(), ok.value().documents()));
                    } else if (result instanceof Result.Refused<CopyReport> no) {
                        Telling.refused(desk, no.refusal());
                    }
                }));
    }
}
