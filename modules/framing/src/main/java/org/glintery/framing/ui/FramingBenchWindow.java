package org.glintery.framing.ui;

import org.glintery.workbench.parts.DeskWindow;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.WhereDrillsAreKept;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;

/** A piece as it will hang, to scale: ways side by side. */
@TopComponent.Description(preferredID = "FramingBenchWindow", persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "editor", openAtStartup = false, position = 300)
@Messages("FramingBenchWindow.name=Framing bench")
public final class FramingBenchWindow extends DeskWindow {

    private static final long serialVersionUID = 1L;

    public FramingBenchWindow() {
        super(Bundle.FramingBenchWindow_name(), Pictogram.FRAMING);
    }

    @Override
    @Messages("FramingBenchWindow.what=The Framing bench works out rails, rebate and glazing of a frame.")
    protected ScreenPart<?> create(Desk desk) {
        return new WhereDrillsAreKept<>(
                desk, new FramingBenchPart(desk), Bundle.FramingBenchWindow_what(), Pictogram.FRAMING);
    }

    @Override
    protected boolean scrolls() {
        return true;
    }
}
