package org.glintery.workbench.menu;

import javax.swing.Action;
import org.glintery.workbench.looks.Looks;
import org.glintery.workbench.parts.Pictogram;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** The View menu: light or dark, and the size of the text. The windows are added by those who bring them. */
public final class ViewMenu {
    private ViewMenu() {}

    @ActionID(category = "View", id = "org.glintery.workbench.menu.DarkAction")
    @ActionRegistration(displayName = "#ViewMenu.dark", lazy = false)
    @ActionReferences({
        @ActionReference(path = "Menu/View", position = 600, separatorBefore = 590),
        @ActionReference(path = "Toolbars/Glintery", position = 900),
        @ActionReference(path = "Shortcuts", name = "D-L")
    })
    @Messages("ViewMenu.dark=Light or dark")
    public static Action dark() {
        return new PlainAction(Bundle.ViewMenu_dark(), Pictogram.LIGHT, () -> Looks.setDark(!Looks.isDark()));
    }

    @ActionID(category = "View", id = "org.glintery.workbench.menu.LargerTextAction")
    @ActionRegistration(displayName = "#ViewMenu.larger", lazy = false)
    @ActionReferences({
        @ActionReference(path = "Menu/View", position = 700),
        @ActionReference(path = "Shortcuts", name = "D-PLUS")
    })
    @Messages("ViewMenu.larger=Larger text")
    public static Action larger() {
        return new PlainAction(Bundle.ViewMenu_larger(), Pictogram.TEXT_SIZE, () -> Looks.grow(1));
    }

    @ActionID(category = "View", id = "org.glintery.workbench.menu.SmallerTextAction")
    @ActionRegistration(displayName = "#ViewMenu.smaller", lazy = false)
    @ActionReferences({
        @ActionReference(path = "Menu/View", position = 710),
        @ActionReference(path = "Shortcuts", name = "D-MINUS")
    })
    @Messages("ViewMenu.smaller=Smaller text")
    public static Action smaller() {
        return new PlainAction(Bundle.ViewMenu_smaller(), Pictogram.REMOVE, () -> Looks.grow(-1));
    }
}
