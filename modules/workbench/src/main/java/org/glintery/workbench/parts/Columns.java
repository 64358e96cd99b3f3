package org.glintery.workbench.parts;

import java.awt.Component;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Stable;

/**
 * Things side by side in equal columns, row by row; in a narrow window there are fewer columns. In MigLayout give it
 * {@code growx, wmin 0}. Event thread.
 */
@Stable
public final class Columns extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final String ONE = "wmin 0, growx, top";
    private static final String TALL = "wmin 0, grow";
    private static final String WHOLE = "span, wmin 0, growx, top, newline";
    private final int most;
    private final int leastPx;
    private final int gapPx;
    private int columns;

    /**
     * @param most columns at the most
     * @param leastPx the least width of one, at the usual text size
     * @param gapYPx between rows, at the usual text size
     */
    public Columns(int most, int leastPx, int gapYPx) {
        super(layout(most, gapYPx));
        this.most = most;
        this.leastPx = leastPx;
        this.gapPx = gapYPx;
        this.columns = most;
        setOpaque(false);
    }

    public void one(JComponent component) {
        add(component, ONE);
    }

    /** As tall as the tallest in its row. */
    public void tall(JComponent component) {
        add(component, TALL);
    }

    /** Over the whole width. @param more further constraints of MigLayout; may be blank */
    public void whole(JComponent component, String more) {
        add(component, more.isBlank() ? WHOLE : WHOLE + ", " + more);
    }

    private static MigLayout layout(int columns, int gapYPx) {
        return new MigLayout(
                "insets 0, fillx, hidemode 3, wrap " + columns + ", gapx " + Space.SECTION + ", gapy " + gapYPx,
                "[grow, fill, sg]".repeat(columns));
    }

    /** Gives up columns that would be too narrow, and takes them back. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        int room = (width + Space.px(Space.SECTION)) / Space.px(leastPx + Space.SECTION);
        int fit = Math.max(1, Math.min(most, room));
        if (width > 0 && fit != columns) {
            columns = fit;
            SwingUtilities.invokeLater(this::arrangeAnew);
        }
    }

    private void arrangeAnew() {
        MigLayout old = (MigLayout) getLayout();
        MigLayout now = layout(columns, gapPx);
        for (Component one : getComponents()) {
            now.addLayoutComponent(one, old.getComponentConstraints(one));
        }
        setLayout(now);
        revalidate();
    }
}
