package org.glintery.workbench.menu;

import java.util.function.Consumer;
import org.glintery.workbench.desk.CurrentDesk;
import org.glintery.workbench.desk.WorkshopDesk;
import org.glintery.workbench.parts.OpenDesk;
import org.glintery.workbench.parts.Pictogram;

/** An action at the open workshop; it can't be used while none is open. Event thread. */
final class DeskAction extends PlainAction {
    private static final long serialVersionUID = 1L;

    DeskAction(String name, Pictogram icon, Consumer<WorkshopDesk> act) {
        super(name, icon, () -> CurrentDesk.get().desk().ifPresent(act));
        OpenDesk.get().listen(desk -> setEnabled(desk.isPresent()));
        setEnabled(OpenDesk.get().current().isPresent());
    }
}
