package org.glintery.framing.ui;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import org.glintery.workbench.parts.Pictogram;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import org.openide.windows.WindowManager;

/** Shows the Framing bench. */
@ActionID(category = "View", id = "org.glintery.framing.ui.FramingBenchAction")
@ActionRegistration(displayName = "#FramingBenchAction.name", lazy = false)
@ActionReferences({
    @ActionReference(path = "Menu/View", position = 240),
    @ActionReference(path = "Toolbars/Glintery", position = 510)
})
@Messages("FramingBenchAction.name=Framing bench")
public final class FramingBenchAction extends AbstractAction {

    private static final long serialVersionUID = 1L;
    private static final int SMALL_PX = 16;
    private static final int LARGE_PX = 24;

    public FramingBenchAction() {
        super(Bundle.FramingBenchAction_name());
        putValue(Action.SMALL_ICON, Pictogram.FRAMING.at(SMALL_PX));
        putValue(Action.LARGE_ICON_KEY, Pictogram.FRAMING.at(LARGE_PX));
    }

    @Override
    public void actionPerformed(ActionEvent e) {
        TopComponent bench = WindowManager.getDefault().findTopComponent("FramingBenchWindow");
        if (bench != null) {
            bench.open();
            bench.requestActive();
        }
    }
}
