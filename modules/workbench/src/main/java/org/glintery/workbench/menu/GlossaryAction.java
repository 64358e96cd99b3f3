package org.glintery.workbench.menu;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import org.glintery.workbench.parts.Pictogram;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** Words we use. */
@ActionID(category = "Help", id = "org.glintery.workbench.menu.GlossaryAction")
@ActionRegistration(displayName = "#GlossaryAction.name", lazy = false)
@ActionReferences({
    @ActionReference(path = "Menu/Help", position = 100),
    @ActionReference(path = "Shortcuts", name = "F1")
})
@Messages("GlossaryAction.name=Words we use")
public final class GlossaryAction extends AbstractAction {
    private static final long serialVersionUID = 1L;

    public GlossaryAction() {
        super(Bundle.GlossaryAction_name());
        putValue(Action.SMALL_ICON, Pictogram.GLOSSARY.at(16));
        putValue(Action.LARGE_ICON_KEY, Pictogram.GLOSSARY.at(24));
    }

    @Override
    public void actionPerformed(ActionEvent e) {
        Glossary.show();
    }
}
