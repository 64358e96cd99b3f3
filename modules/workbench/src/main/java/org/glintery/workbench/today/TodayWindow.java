package org.glintery.workbench.today;

import org.glintery.workbench.parts.DeskWindow;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;

/** What asks for attention now. */
@TopComponent.Description(preferredID = "TodayWindow", persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "editor", openAtStartup = true, position = 100)
@ActionID(category = "View", id = "org.glintery.workbench.today.TodayWindow")
@ActionReference(path = "Menu/View", position = 210)
@TopComponent.OpenActionRegistration(displayName = "#TodayWindow.name", preferredID = "TodayWindow")
@Messages("TodayWindow.name=Today")
public final class TodayWindow extends DeskWindow {
    private static final long serialVersionUID = 1L;

    public TodayWindow() {
        super(Bundle.TodayWindow_name(), Pictogram.TODAY);
    }

    @Override
    protected ScreenPart<?> create(Desk desk) {
        return new TodayPart(desk);
    }

    @Override
    protected boolean scrolls() {
        return true;
    }
}
