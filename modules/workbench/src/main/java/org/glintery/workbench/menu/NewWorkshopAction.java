package org.glintery.workbench.menu;

import java.awt.event.ActionEvent;
import java.nio.file.Path;
import javax.swing.AbstractAction;
import javax.swing.Action;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.start.Opening;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** New workshop. */
@ActionID(category = "Workshop", id = "org.glintery.workbench.menu.NewWorkshopAction")
@ActionRegistration(displayName = "#NewWorkshopAction.name", lazy = false)
@ActionReference(path = "Menu/Workshop", position = 100)
@Messages("NewWorkshopAction.name=New workshop")
public final class NewWorkshopAction extends AbstractAction {
    private static final long serialVersionUID = 1L;

    public NewWorkshopAction() {
        super(Bundle.NewWorkshopAction_name());
        putValue(Action.SMALL_ICON, Pictogram.ADD.at(16));
        putValue(Action.LARGE_ICON_KEY, Pictogram.ADD.at(24));
    }

    @Override
    public void actionPerformed(ActionEvent e) {
        Opening.usual().askForNew(Path.of(System.getProperty("user.home"), "Glintery"));
    }
}
