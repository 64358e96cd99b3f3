package org.glintery.storage.ui;

import org.glintery.workbench.parts.DeskWindow;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.WhereDrillsAreKept;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;

/** The holders and bags, drawn as they are. */
@TopComponent.Description(preferredID = "CabinetWindow", persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "editor", openAtStartup = true, position = 200)
@Messages("CabinetWindow.name=Cabinet")
public final class CabinetWindow extends DeskWindow {

    private static final long serialVersionUID = 1L;

    public CabinetWindow() {
        super(Bundle.CabinetWindow_name(), Pictogram.CABINET);
    }

    @Override
    @Messages("CabinetWindow.what=The Cabinet shows what lies in which pocket and bag.")
    protected ScreenPart<?> create(Desk desk) {
        return new WhereDrillsAreKept<>(desk, new CabinetPart(desk), Bundle.CabinetWindow_what(), Pictogram.CABINET);
    }
}
