package org.glintery.workbench.menu;

import org.glintery.api.Result;
import org.glintery.api.workshop.Workshop.CopyReport;
import org.glintery.workbench.desk.WorkshopDesk;
import org.glintery.workbench.parts.Pictogram;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** Export all. */
@ActionID(category = "Workshop", id = "org.glintery.workbench.menu.ExportAction")
@ActionRegistration(displayName = "#ExportAction.name", lazy = false)
@ActionReference(path = "Menu/Workshop", position = 500, separatorBefore = 490)
@Messages({
    "ExportAction.name=Export all",
    "ExportAction.title=Export the workshop",
    "# {0} - file",
    "# {1} - documents",
    "ExportAction.done=Written to {0}: {1} documents."
})
public final class ExportAction extends DeskAction {
    private static final long serialVersionUID = 1L;

    public ExportAction() {
        super(Bundle.ExportAction_name(), Pictogram.EXPORT);
    }

    @Override
    void act(WorkshopDesk desk) {
        Files.save(Bundle.ExportAction_title(), desk.workshop().folder().getFileName() + ".json")
                .ifPresent(file -> desk.compute(view -> desk.workshop().exportJson(file), result -> {
                    if (result instanceof Result.Ok<CopyReport> ok) {
                        desk.say(Bundle.ExportAction_done(
                                file.getFileName(), ok.value().documents()));
                    } else if (result instanceof Result.Refused<CopyReport> no) {
                        Telling.refused(desk, no.refusal());
                    }
                }));
    }
}
