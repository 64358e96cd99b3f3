package org.glintery.workbench.menu;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import org.glintery.workbench.parts.Pictogram;
import org.openide.LifecycleManager;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** Quit. */
@ActionID(category = "Workshop", id = "org.glintery.workbench.menu.QuitAction")
@ActionRegistration(displayName = "#QuitAction.name", lazy = false)
@ActionReferences({
    @ActionReference(path = "Menu/Workshop", position = 900),
    @ActionReference(path = "Shortcuts", name = "D-Q")
})
@Messages("QuitAction.name=Quit")
public final class QuitAction extends AbstractAction {
    private static final long serialVersionUID = 1L;

    public QuitAction() {
        super(Bundle.QuitAction_name());
        putValue(Action.SMALL_ICON, Pictogram.REST.at(16));
        putValue(Action.LARGE_ICON_KEY, Pictogram.REST.at(24));
    }

    @Override
    public void actionPerformed(ActionEvent e) {
        LifecycleManager.getDefault().exit();
    }
}
