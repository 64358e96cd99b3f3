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

/** Larger text. */
@ActionID(category = "View", id = "org.glintery.workbench.menu.LargerTextAction")
@ActionRegistration(displayName = "#LargerTextAction.name", lazy = false)
@ActionReferences({
    @ActionReference(path = "Menu/View", position = 700),
    @ActionReference(path = "Shortcuts", name = "D-PLUS")
})
@Messages("LargerTextAction.name=Larger text")
public final class LargerTextAction extends AbstractAction {
    private static final long serialVersionUID = 1L;

    public LargerTextAction() {
        super(Bundle.LargerTextAction_name());
        putValue(Action.SMALL_ICON, Pictogram.TEXT_SIZE.at(16));
        putValue(Action.LARGE_ICON_KEY, Pictogram.TEXT_SIZE.at(24));
    }

    @Override
    public void actionPerformed(ActionEvent e) {
        Looks.grow(1);
    }
}
