package org.glintery.workbench.parts;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.glintery.api.Stable;

/**
 * Two things side by side where there is room for both, else one below the other. To be put into a {@link PageScroll},
 * so that the lower one can be reached. Event thread.
 */
@Stable
public final class BesideOrBelow extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int GAP_PX = Space.SECTION;
    private final JComponent first;
    private final JComponent second;
    private final int firstLeastPx;
    private final int secondPx;

    /**
     * @param firstLeastPx the least width for the first beside the second, at the usual text size; it takes all there is
     * @param secondPx the width of the second when it is beside
     */
    public BesideOrBelow(JComponent first, int firstLeastPx, JComponent second, int secondPx) {
        super(null);
        this.first = first;
        this.second = second;
        this.firstLeastPx = firstLeastPx;
        this.secondPx = secondPx;
        setLayout(new Two());
        setOpaque(false);
        add(first);
        add(second);
    }

    /** Another width may need another height. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean other = width != getWidth();
        super.setBounds(x, y, width, height);
        if (other) {
            SwingUtilities.invokeLater(this::revalidate);
        }
    }

    private boolean isBeside(int width) {
        return width >= Space.px(firstLeastPx) + Space.px(GAP_PX) + Space.px(secondPx);
    }

    private final class Two implements LayoutManager {
        @Override
        public Dimension preferredLayoutSize(Container parent) {
            Insets insets = parent.getInsets();
            int room = parent.getWidth() - insets.left - insets.right;
            Dimension one = first.getPreferredSize();
            Dimension other = second.isVisible() ? second.getPreferredSize() : new Dimension();
            boolean beside = parent.getWidth() == 0 || isBeside(room);
            int width = beside ? one.width + Space.px(GAP_PX + secondPx) : Math.max(one.width, other.width);
            int below = second.isVisible() ? Space.px(GAP_PX) + other.height : 0;
            int height = beside ? Math.max(one.height, other.height) : one.height + below;
            return new Dimension(width + insets.left + insets.right, height + insets.top + insets.bottom);
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            return new Dimension(0, preferredLayoutSize(parent).height);
        }

        @Override
        public void layoutContainer(Container parent) {
            Insets insets = parent.getInsets();
            int x = insets.left;
            int y = insets.top;
            int width = parent.getWidth() - insets.left - insets.right;
            int height = parent.getHeight() - insets.top - insets.bottom;
            if (!second.isVisible()) {
                first.setBounds(x, y, width, height);
            } else if (isBeside(width)) {
                int right = Space.px(secondPx);
                first.setBounds(x, y, width - right - Space.px(GAP_PX), height);
                second.setBounds(x + width - right, y, right, height);
            } else {
                int lower = second.getPreferredSize().height;
                int upper = Math.max(first.getPreferredSize().height, height - lower - Space.px(GAP_PX));
                first.setBounds(x, y, width, upper);
                second.setBounds(x, y + upper + Space.px(GAP_PX), width, lower);
            }
        }

        @Override
        public void addLayoutComponent(String name, Component component) {
            // there are always the same two
        }

        @Override
        public void removeLayoutComponent(Component component) {
            // there are always the same two
        }
    }
}
