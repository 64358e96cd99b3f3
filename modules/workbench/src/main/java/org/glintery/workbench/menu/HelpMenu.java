package org.glintery.workbench.menu;

import javax.swing.Action;
import org.glintery.workbench.parts.Pictogram;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** The Help menu. */
public final class HelpMenu {
    private HelpMenu() {}

    @ActionID(category = "Help", id = "org.glintery.workbench.menu.GlossaryAction")
    @ActionRegistration(displayName = "#HelpMenu.words", lazy = false)
    @ActionReferences({
        @ActionReference(path = "Menu/Help", position = 100),
        @ActionReference(path = "Shortcuts", name = "F1")
    })
    @Messages("HelpMenu.words=Words we use")
    public static Action words() {
        return new PlainAction(Bundle.HelpMenu_words(), Pictogram.GLOSSARY, GlossarySheet::show);
    }

    @ActionID(category = "Help", id = "org.glintery.workbench.menu.AboutGlinteryAction")
    @ActionRegistration(displayName = "#HelpMenu.about", lazy = false)
    @ActionReference(path = "Menu/Help", position = 900)
    @Messages("HelpMenu.about=About Glintery")
    public static Action about() {
        return new PlainAction(Bundle.HelpMenu_about(), Pictogram.GLINTERY, AboutSheet::show);
    }
}
