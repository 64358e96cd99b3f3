package org.glintery.workbench.parts;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.glintery.api.Stable;

/**
 * Lays components out in rows, as many side by side as fit; the rest goes into the next row, so that nothing is cut off
 * in a narrow window. Event thread.
 */
@Stable
public final class FlowRows extends JPanel {
    private static final long serialVersionUID = 1L;
    /** The size it asked for last. */
    private transient Dimension asked;

    /** Each as wide as it wants to be. */
    public static FlowRows of(JComponent... ones) {
        return new FlowRows(new Rows(false, false), ones);
    }

    /** Things of different heights: each row begins at its upper edge. */
    public static FlowRows ofTop(JComponent... ones) {
        return new FlowRows(new Rows(false, true), ones);
    }

    /** The first takes the room that the others leave, and a row of its own when they leave too little. */
    public static FlowRows growing(JComponent first, JComponent... others) {
        JComponent[] all = new JComponent[others.length + 1];
        all[0] = first;
        System.arraycopy(others, 0, all, 1, others.length);
        return new FlowRows(new Rows(true, false), all);
    }

    private FlowRows(Rows rows, JComponent... ones) {
        super(rows);
        setOpaque(false);
        for (JComponent one : ones) {
            add(one);
        }
    }

    /** Another width may need another height. Asked for once: who holds it may give it another all the same. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        Dimension wanted = new Dimension(width, getPreferredSize().height);
        if (width > 0 && wanted.height != height && !wanted.equals(asked)) {
            asked = wanted;
            SwingUtilities.invokeLater(this::revalidate);
        }
    }

    private record Rows(boolean firstGrows, boolean top) implements LayoutManager {
        private static final int GAP_PX = Space.NEAR;

        @Override
        public Dimension preferredLayoutSize(Container parent) {
            int all = wanted(shown(parent));
            int width = parent.getWidth() > 0 ? parent.getWidth() : all;
            return new Dimension(all, arrange(parent, width, false));
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            int widest = shown(parent).stream()
                    .mapToInt(c -> c.getMinimumSize().width)
                    .max()
                    .orElse(0);
            int width = parent.getWidth() > 0 ? parent.getWidth() : wanted(shown(parent));
            return new Dimension(widest, arrange(parent, width, false));
        }

        @Override
        public void layoutContainer(Container parent) {
            arrange(parent, parent.getWidth(), true);
        }

        private int arrange(Container parent, int width, boolean place) {
            List<Component> left = new ArrayList<>(shown(parent));
            int y = 0;
            boolean first = true;
            while (!left.isEmpty()) {
                List<Component> row = row(left, width, first);
                int height = row.stream()
                        .mapToInt(c -> c.getPreferredSize().height)
                        .max()
                        .orElse(0);
                if (place) {
                    place(row, y, width, height, first);
                }
                y += height + Space.px(GAP_PX);
                left.subList(0, row.size()).clear();
                first = false;
            }
            return Math.max(0, y - Space.px(GAP_PX));
        }

        private List<Component> row(List<Component> left, int width, boolean first) {
            if (first && firstGrows && wanted(left) > width) {
                return List.of(left.get(0));
            }
            int fit = 1;
            while (fit < left.size() && wanted(left.subList(0, fit + 1)) <= width) {
                fit++;
            }
            return List.copyOf(left.subList(0, fit));
        }

        private void place(List<Component> row, int y, int width, int height, boolean first) {
            int spare = first && firstGrows ? Math.max(0, width - wanted(row)) : 0;
            int x = 0;
            for (Component one : row) {
                Dimension size = one.getPreferredSize();
                int wide = Math.min(width, size.width + (x == 0 ? spare : 0));
                one.setBounds(x, top ? y : y + (height - size.height) / 2, wide, size.height);
                x += wide + Space.px(GAP_PX);
            }
        }

        private static int wanted(List<Component> row) {
            return row.stream().mapToInt(c -> c.getPreferredSize().width).sum()
                    + Math.max(0, row.size() - 1) * Space.px(GAP_PX);
        }

        private static List<Component> shown(Container parent) {
            return List.of(parent.getComponents()).stream()
                    .filter(Component::isVisible)
                    .toList();
        }

        @Override
        public void addLayoutComponent(String name, Component component) {
            // every component is treated alike
        }

        @Override
        public void removeLayoutComponent(Component component) {
            // nothing is remembered
        }
    }
}
