package org.glintery.workbench.piece;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.workbench.found.Found;
import org.glintery.workbench.parts.OpenDesk;
import org.glintery.workbench.parts.PartPane;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.PieceTab;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.Mode;
import org.openide.windows.TopComponent;
import org.openide.windows.WindowManager;

/** The page of one piece. Event thread. */
public final class PieceWindow extends TopComponent {
    private static final long serialVersionUID = 1L;
    private static final int TAB_ICON_PX = 16;
    private static final int LEAST_PX = 160;
    private static final int LOW_PX = 560;
    private final UUID piece;
    private final transient JobCardPart card;

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
        card = new JobCardPart(desk, piece, this::named);
        add(new PartPane(Bundle.PieceWindow_job(), desk, card), BorderLayout.NORTH);
        add(new PieceTabs(desk, piece, Found.all(PieceTab.class)));
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        card.setCompact(height < Space.px(LOW_PX));
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

    /** What is in it scrolls or wraps, so the window itself may become narrow. */
    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Space.px(LEAST_PX), Space.px(LEAST_PX));
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
