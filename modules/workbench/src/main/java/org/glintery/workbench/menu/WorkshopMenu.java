package org.glintery.workbench.menu;

import java.nio.file.Path;
import java.util.Optional;
import javax.swing.Action;
import org.glintery.api.stash.Stash;
import org.glintery.workbench.parts.KeptDepth;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.shelves.Entries;
import org.glintery.workbench.start.Opening;
import org.openide.LifecycleManager;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** The Workshop menu: what comes into the workshop, opening one and closing it. Copies are in {@link CopiesMenu}. */
public final class WorkshopMenu {
    private WorkshopMenu() {}

    @ActionID(category = "Workshop", id = "org.glintery.workbench.menu.ShelveKitAction")
    @ActionRegistration(displayName = "#WorkshopMenu.kit", lazy = false)
    @ActionReferences({
        @ActionReference(path = "Menu/Workshop", position = 50),
        @ActionReference(path = "Toolbars/Glintery", position = 300),
        @ActionReference(path = "Shortcuts", name = "D-N")
    })
    @Messages("WorkshopMenu.kit=Shelve a kit")
    public static Action kit() {
        return new DeskAction(Bundle.WorkshopMenu_kit(), Pictogram.KIT, Entries::newKit);
    }

    @ActionID(category = "Workshop", id = "org.glintery.workbench.menu.OldFinishAction")
    @ActionRegistration(displayName = "#WorkshopMenu.finishes", lazy = false)
    @ActionReferences({
        @ActionReference(path = "Menu/Workshop", position = 60),
        @ActionReference(path = "Toolbars/Glintery", position = 310)
    })
    @Messages("WorkshopMenu.finishes=Write old finishes")
    public static Action finishes() {
        return new DeskAction(Bundle.WorkshopMenu_finishes(), Pictogram.FINISH, Entries::oldFinish);
    }

    @ActionID(category = "Workshop", id = "org.glintery.workbench.menu.NewWorkshopAction")
    @ActionRegistration(displayName = "#WorkshopMenu.make", lazy = false)
    @ActionReference(path = "Menu/Workshop", position = 100, separatorBefore = 90)
    @Messages("WorkshopMenu.make=New workshop")
    public static Action make() {
        Path usual = Path.of(System.getProperty("user.home"), "Glintery");
        return new PlainAction(
                Bundle.WorkshopMenu_make(), Pictogram.ADD, () -> Opening.usual().askForNew(usual));
    }

    @ActionID(category = "Workshop", id = "org.glintery.workbench.menu.OpenWorkshopAction")
    @ActionRegistration(displayName = "#WorkshopMenu.open", lazy = false)
    @ActionReferences({
        @ActionReference(path = "Menu/Workshop", position = 200),
        @ActionReference(path = "Shortcuts", name = "D-O")
    })
    @Messages({"WorkshopMenu.open=Open workshop", "WorkshopMenu.openThis=Open this workshop"})
    public static Action open() {
        return new PlainAction(
                Bundle.WorkshopMenu_open(),
                Pictogram.OPEN,
                () -> Files.folder(Bundle.WorkshopMenu_openThis())
                        .ifPresent(folder -> Opening.usual().openExisting(folder)));
    }

    @ActionID(category = "Workshop", id = "org.glintery.workbench.menu.DepthAction")
    @ActionRegistration(displayName = "#WorkshopMenu.depth", lazy = false)
    @ActionReference(path = "Menu/Workshop", position = 750)
    @Messages({
        "WorkshopMenu.depth=Keep only the book",
        "WorkshopMenu.depthChanged=Changed. What was kept before is still there."
    })
    public static Action depth() {
        return new ToldAction(
                Bundle.WorkshopMenu_depth(),
                Pictogram.WORKSHOP,
                workshop -> Optional.of(KeptDepth.words(KeptDepth.other(workshop.view()))),
                desk -> desk.change(
                        view -> KeptDepth.change(desk.workshop().find(Stash.class), KeptDepth.other(view))
                                .apply(view),
                        applied -> desk.say(Bundle.WorkshopMenu_depthChanged())));
    }

    @ActionID(category = "Workshop", id = "org.glintery.workbench.menu.CurrencyAction")
    @ActionRegistration(displayName = "#WorkshopMenu.currency", lazy = false)
    @ActionReference(path = "Menu/Workshop", position = 760)
    @Messages("WorkshopMenu.currency=Choose the currency of prices")
    public static Action currency() {
        return new DeskAction(Bundle.WorkshopMenu_currency(), Pictogram.WORKSHOP, CurrencyQuestion::ask);
    }

    @ActionID(category = "Workshop", id = "org.glintery.workbench.menu.CloseWorkshopAction")
    @ActionRegistration(displayName = "#WorkshopMenu.close", lazy = false)
    @ActionReference(path = "Menu/Workshop", position = 800, separatorBefore = 790)
    @Messages("WorkshopMenu.close=Close workshop")
    public static Action close() {
        return new DeskAction(
                Bundle.WorkshopMenu_close(),
                Pictogram.CLOSE,
                desk -> Opening.usual().closeCurrent());
    }

    @ActionID(category = "Workshop", id = "org.glintery.workbench.menu.QuitAction")
    @ActionRegistration(displayName = "#WorkshopMenu.quit", lazy = false)
    @ActionReferences({
        @ActionReference(path = "Menu/Workshop", position = 900),
        @ActionReference(path = "Shortcuts", name = "D-Q")
    })
    @Messages("WorkshopMenu.quit=Quit")
    public static Action quit() {
        return new PlainAction(
                Bundle.WorkshopMenu_quit(),
                Pictogram.REST,
                () -> LifecycleManager.getDefault().exit());
    }
}
