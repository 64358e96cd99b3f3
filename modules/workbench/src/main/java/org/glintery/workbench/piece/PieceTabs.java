package org.glintery.workbench.piece;

import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.JTabbedPane;
import org.glintery.workbench.found.Found;
import org.glintery.workbench.parts.PartPane;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.PieceTab;

/** The tabs of a piece's page, from whichever features are there. Event thread. */
final class PieceTabs extends JTabbedPane {
    private static final long serialVersionUID = 1L;
    private static final Logger LOG = Logger.getLogger(PieceTabs.class.getName());

    PieceTabs(Desk desk, UUID piece) {
        List<PieceTab> offered = Found.all(PieceTab.class).stream()
                .sorted(Comparator.comparingInt(PieceTab::position))
                .<PieceTab>map(PieceTab.class::cast)
                .toList();
        for (PieceTab tab : offered) {
            try {
                if (tab.offered(desk.view(), piece)) {
                    addTab(tab.title(), new PartPane(tab.title(), desk, tab.create(desk, piece)));
                }
            } catch (RuntimeException | LinkageError e) { // a tab of an add-on may not take the page with it
                LOG.log(Level.WARNING, "Left out: " + tab.getClass().getName(), e);
            }
        }
    }
}
