package org.glintery.workbench.piece;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Insets;
import java.util.Collection;
import java.util.Comparator;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.IntStream;
import javax.swing.JTabbedPane;
import org.glintery.workbench.host.ForeignCall;
import org.glintery.workbench.parts.PartPane;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.PieceTab;
import org.glintery.workbench.spi.ScreenPart;
import org.glintery.workbench.words.Words;

/** The tabs of a piece's page, from whichever features are there. One that fails says so in its place. Event thread. */
final class PieceTabs extends JTabbedPane {
    private static final long serialVersionUID = 1L;
    /** Beside a tab's words, as the theme has it. */
    private static final int USUAL_PX = 16;

    private static final int CLOSE_PX = 5;
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

    /** Tabs stand closer together before they would need a second row, which moves about when one is chosen. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        int words = IntStream.range(0, getTabCount())
                .map(tab -> getFontMetrics(getFont()).stringWidth(getTitleAt(tab)))
                .sum();
        boolean roomy = words + getTabCount() * 2 * Space.px(USUAL_PX) + Space.px(USUAL_PX) <= width;
        Insets insets = roomy ? null : new Insets(CLOSE_PX, CLOSE_PX, CLOSE_PX, CLOSE_PX);
        if (!Objects.equals(insets, getClientProperty(FlatClientProperties.TABBED_PANE_TAB_INSETS))) {
            putClientProperty(FlatClientProperties.TABBED_PANE_TAB_INSETS, insets);
        }
    }

    private void add(PieceTab tab) {
        String title = ForeignCall.makeOr(tab.getClass().getSimpleName(), tab, tab::title);
        addTab(
                title,
                null,
                new PartPane(title, desk, tab, () -> create(tab)),
                Words.tip(title).orElse(null));
    }

    /** Asks once more whether it is offered: where that failed, it fails here, where it is told. */
    private ScreenPart<?> create(PieceTab tab) {
        tab.offered(desk.view(), piece);
        return tab.create(desk, piece);
    }
}
