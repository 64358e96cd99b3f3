package org.glintery.workbench.menu;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.start.Opening;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** Open workshop. */
@ActionID(category = "Workshop", id = "org.glintery.workbench.menu.OpenWorkshopAction")
@ActionRegistration(displayName = "#OpenWorkshopAction.name", lazy = false)
@ActionReferences({
    @ActionReference(path = "Menu/Workshop", position = 200),
    @ActionReference(path = "Shortcuts", name = "D-O")
})
@Messages({"OpenWorkshopAction.name=Open workshop", "OpenWorkshopAction.choose=Open this workshop"})
public final class OpenWorkshopAction extends AbstractAction {
    private static final long serialVersionUID = 1L;

    public OpenWorkshopAction() {
        super(Bundle.OpenWorkshopAction_name());
        putValue(Action.SMALL_ICON, Pictogram.OPEN.at(16));
        putValue(Action.LARGE_ICON_KEY, Pictogram.OPEN.at(24));
    }

    @Override
    public void actionPerformed(ActionEvent e) {
        Files.folder(Bundle.OpenWorkshopAction_choose())
                .ifPresent(folder -> Opening.usual().openExisting(folder));
    }
}
