package org.glintery.workbench.piece;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.workbench.parts.OpenDesk;
import org.glintery.workbench.parts.PartPane;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.Mode;
import org.openide.windows.TopComponent;
import org.openide.windows.WindowManager;

/** The page of one piece. Event thread. */
public final class PieceWindow extends TopComponent {
    private static final long serialVersionUID = 1L;
    private static final int TAB_ICON_PX = 16;
    private final UUID piece;

    /** Shows the page of a piece, opening it when it is not open yet. */
    public static void show(UUID piece) {
        Optional<Desk> desk = OpenDesk.get().current();
        if (desk.isEmpty()) {
            return;
        }
        PieceWindow window = pages().stream()
                .filter(w -> w.piece.equals(piece))
                .findFirst()
                .orElseGet(() -> new PieceWindow(desk.get(), piece));
        if (!window.isOpened()) {
            Mode editor = WindowManager.getDefault().findMode("editor");
            if (editor != null) {
                editor.dockInto(window);
            }
            window.open();
        }
        window.requestActive();
    }

    /** Closes all pages, as when the workshop is closed. */
    public static void closeAll() {
        pages().forEach(TopComponent::close);
    }

    @Messages("PieceWindow.job=Job card")
    private PieceWindow(Desk desk, UUID piece) {
        this.piece = piece;
        setLayout(new BorderLayout());
        setIcon(Pictogram.PIECE.image(TAB_ICON_PX));
        setName(" ");
        add(
                new PartPane(Bundle.PieceWindow_job(), desk, new JobCardPart(desk, piece, this::named)),
                BorderLayout.NORTH);
        add(new PieceTabs(desk, piece));
    }

    private void named(JobCardFacts facts) {
        if (facts.gone()) {
            close();
            return;
        }
        setName(facts.title());
        setDisplayName(facts.title());
        setToolTipText(facts.title());
        getAccessibleContext().setAccessibleName(facts.title());
    }

    private static List<PieceWindow> pages() {
        List<PieceWindow> found = new ArrayList<>();
        for (TopComponent window : TopComponent.getRegistry().getOpened()) {
            if (window instanceof PieceWindow page) {
                found.add(page);
            }
        }
        return found;
    }

    /** Also called when light and dark are switched: the icon on the tab is an image and does not follow by itself. */
    @Override
    public void updateUI() {
        super.updateUI();
        setIcon(Pictogram.PIECE.image(TAB_ICON_PX));
    }

    @Override
    public int getPersistenceType() {
        return PERSISTENCE_NEVER;
    }

    @Override
    protected String preferredID() {
        return "PieceWindow";
    }
}
