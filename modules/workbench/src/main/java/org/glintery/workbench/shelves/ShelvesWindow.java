package org.glintery.workbench.shelves;

import org.glintery.workbench.parts.DeskWindow;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;

/** All pieces by standing, at the left. */
@TopComponent.Description(preferredID = "ShelvesWindow", persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "explorer", openAtStartup = true)
@ActionID(category = "View", id = "org.glintery.workbench.shelves.ShelvesWindow")
@ActionReference(path = "Menu/View", position = 220)
@TopComponent.OpenActionRegistration(displayName = "#ShelvesWindow.name", preferredID = "ShelvesWindow")
@Messages("ShelvesWindow.name=Shelves")
public final class ShelvesWindow extends DeskWindow {
    private static final long serialVersionUID = 1L;

    public ShelvesWindow() {
        super(Bundle.ShelvesWindow_name(), Pictogram.SHELVES);
    }

    @Override
    protected ScreenPart<?> create(Desk desk) {
        return new ShelvesPart(desk);
    }
}
