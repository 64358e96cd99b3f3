package org.glintery.workbench.menu;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import org.glintery.workbench.parts.Pictogram;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** About Glintery. */
@ActionID(category = "Help", id = "org.glintery.workbench.menu.AboutGlinteryAction")
@ActionRegistration(displayName = "#AboutGlinteryAction.name", lazy = false)
@ActionReference(path = "Menu/Help", position = 900)
@Messages("AboutGlinteryAction.name=About Glintery")
public final class AboutGlinteryAction extends AbstractAction {
    private static final long serialVersionUID = 1L;

    public AboutGlinteryAction() {
        super(Bundle.AboutGlinteryAction_name());
        putValue(Action.SMALL_ICON, Pictogram.GLINTERY.at(16));
        putValue(Action.LARGE_ICON_KEY, Pictogram.GLINTERY.at(24));
    }

    @Override
    public void actionPerformed(ActionEvent e) {
        AboutSheet.show();
    }
}
