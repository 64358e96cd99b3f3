package org.glintery.workbench.piece;

import java.util.Collection;
import java.util.Comparator;
import java.util.UUID;
import javax.swing.JTabbedPane;
import org.glintery.workbench.host.ForeignCall;
import org.glintery.workbench.parts.PartPane;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.PieceTab;
import org.glintery.workbench.spi.ScreenPart;

/** The tabs of a piece's page, from whichever features are there. One that fails says so in its place. Event thread. */
final class PieceTabs extends JTabbedPane {
    private static final long serialVersionUID = 1L;
    private final transient Desk desk;
    private final UUID piece;

    PieceTabs(Desk desk, UUID piece, Collection<? extends PieceTab> tabs) {
        this.desk = desk;
        this.piece = piece;
        tabs.stream()
                .<PieceTab>map(tab -> tab)
                .sorted(Comparator.comparing(tab -> ForeignCall.makeOr(Integer.MAX_VALUE, tab, tab::position)))
                .filter(tab -> ForeignCall.makeOr(true, tab, () -> tab.offered(desk.view(), piece)))
                .forEach(this::add);
    }

    private void add(PieceTab tab) {
        String title = ForeignCall.makeOr(tab.getClass().getSimpleName(), tab, tab::title);
        addTab(title, new PartPane(title, desk, tab, () -> create(tab)));
    }

    /** Asks once more whether it is offered: where that failed, it fails here, where it is told. */
    private ScreenPart<?> create(PieceTab tab) {
        tab.offered(desk.view(), piece);
        return tab.create(desk, piece);
    }
}
