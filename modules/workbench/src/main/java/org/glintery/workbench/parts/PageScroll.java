package org.glintery.workbench.parts;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;
import org.glintery.api.Stable;

/** Scrolls a page up and down and keeps it as wide as the window, so that text wraps. Event thread. */
@Stable
public final class PageScroll extends JScrollPane {
    private static final long serialVersionUID = 1L;
    private static final int STEP_PX = 24;

    public PageScroll(JComponent page) {
        super(new Page(page));
        setHorizontalScrollBarPolicy(HORIZONTAL_SCROLLBAR_NEVER);
        getViewport().setOpaque(false);
        setOpaque(false);
        setBorder(javax.swing.BorderFactory.createEmptyBorder());
    }

    private static final class Page extends JPanel implements Scrollable {
        private static final long serialVersionUID = 1L;

        Page(JComponent page) {
            super(new BorderLayout());
            setOpaque(false);
            add(page);
        }

        @Override
        public Dimension getPreferredScrollableViewportSize() {
            return getPreferredSize();
        }

        @Override
        public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
            return Space.px(STEP_PX);
        }

        @Override
        public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
            return visible.height - Space.px(STEP_PX);
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }

        @Override
        public boolean getScrollableTracksViewportHeight() {
            return getParent() != null
                    && getPreferredSize().height < getParent().getHeight();
        }
    }
}
