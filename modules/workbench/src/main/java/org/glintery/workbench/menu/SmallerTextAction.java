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

/** Smaller text. */
@ActionID(category = "View", id = "org.glintery.workbench.menu.SmallerTextAction")
@ActionRegistration(displayName = "#SmallerTextAction.name", lazy = false)
@ActionReferences({
    @ActionReference(path = "Menu/View", position = 710),
    @ActionReference(path = "Shortcuts", name = "D-MINUS")
})
@Messages("SmallerTextAction.name=Smaller text")
public final class SmallerTextAction extends AbstractAction {
    private static final long serialVersionUID = 1L;

    public SmallerTextAction() {
        super(Bundle.SmallerTextAction_name());
        putValue(Action.SMALL_ICON, Pictogram.REMOVE.at(16));
        putValue(Action.LARGE_ICON_KEY, Pictogram.REMOVE.at(24));
    }

    @Override
    public void actionPerformed(ActionEvent e) {
        Looks.grow(-1);
    }
}
