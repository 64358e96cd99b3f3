package org.glintery.storage.ui;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import org.glintery.workbench.parts.Pictogram;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import org.openide.windows.WindowManager;

/** Shows the Cabinet. */
@ActionID(category = "View", id = "org.glintery.storage.ui.CabinetAction")
@ActionRegistration(displayName = "#CabinetAction.name", lazy = false)
@ActionReferences({
    @ActionReference(path = "Menu/View", position = 230),
    @ActionReference(path = "Toolbars/Glintery", position = 350)
})
@Messages("CabinetAction.name=Cabinet")
public final class CabinetAction extends AbstractAction {

    private static final long serialVersionUID = 1L;
    private static final int SMALL_PX = 16;
    private static final int LARGE_PX = 24;

    public CabinetAction() {
        super(Bundle.CabinetAction_name());
        putValue(Action.SMALL_ICON, Pictogram.CABINET.at(SMALL_PX));
        putValue(Action.LARGE_ICON_KEY, Pictogram.CABINET.at(LARGE_PX));
    }

    @Override
    public void actionPerformed(ActionEvent e) {
        TopComponent cabinet = WindowManager.getDefault().findTopComponent("CabinetWindow");
        if (cabinet != null) {
            cabinet.open();
            cabinet.requestActive();
        }
    }
}
