package org.glintery.workbench.menu;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import org.glintery.workbench.looks.Looks;
import org.glintery.workbench.parts.Pictogram;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** Light or dark. */
@ActionID(category = "View", id = "org.glintery.workbench.menu.DarkAction")
@ActionRegistration(displayName = "#DarkAction.name", lazy = false)
@ActionReferences({
    @ActionReference(path = "Menu/View", position = 600, separatorBefore = 590),
    @ActionReference(path = "Toolbars/Glintery", position = 900),
    @ActionReference(path = "Shortcuts", name = "D-L")
})
@Messages("DarkAction.name=Light or dark")
public final class DarkAction extends AbstractAction {
    private static final long serialVersionUID = 1L;

    public DarkAction() {
        super(Bundle.DarkAction_name());
        putValue(Action.SMALL_ICON, Pictogram.LIGHT.at(16));
        putValue(Action.LARGE_ICON_KEY, Pictogram.LIGHT.at(24));
    }

    @Override
    public void actionPerformed(ActionEvent e) {
        Looks.setDark(!Looks.isDark());
    }
}
