package org.glintery.workbench.menu;

import org.glintery.api.Refusal;
import org.glintery.workbench.desk.WorkshopDesk;
import org.glintery.workbench.parts.Pictogram;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** Check the workshop. */
@ActionID(category = "Workshop", id = "org.glintery.workbench.menu.CheckAction")
@ActionRegistration(displayName = "#CheckAction.name", lazy = false)
@ActionReference(path = "Menu/Workshop", position = 700, separatorBefore = 690)
@Messages({
    "CheckAction.name=Check the workshop",
    "CheckAction.checking=Checking \u2026",
    "# {0} - documents",
    "# {1} - movements",
    "# {2} - pictures",
    "CheckAction.clean=All is well: {0} documents, {1} movements and {2} pictures agree.",
    "# {0} - sentences",
    "CheckAction.problems=Something does not agree. Restore the last backup into a new folder and compare.\n{0}"
})
public final class CheckAction extends DeskAction {
    private static final long serialVersionUID = 1L;

    public CheckAction() {
        super(Bundle.CheckAction_name(), Pictogram.CHECK);
    }

    @Override
    void act(WorkshopDesk desk) {
        desk.say(Bundle.CheckAction_checking());
        desk.compute(view -> desk.workshop().check(), report -> {
            if (report.problems().isEmpty()) {
                desk.say(Bundle.CheckAction_clean(report.documents(), report.movements(), report.blobs()));
            } else {
                String all = String.join("\n", report.problems());
                Telling.refused(desk, new Refusal("check", Bundle.CheckAction_problems(all)));
            }
        });
    }
}
