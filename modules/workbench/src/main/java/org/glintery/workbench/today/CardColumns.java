package org.glintery.workbench.today;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;
import java.util.Arrays;

/** Lays cards out in as many columns as fit, each card under the shortest column. Event thread. */
final class CardColumns implements LayoutManager {
    private final int leastWidthPx;
    private final int mostColumns;
    private final int gapPx;

    CardColumns(int leastWidthPx, int mostColumns, int gapPx) {
        this.leastWidthPx = leastWidthPx;
        this.mostColumns = mostColumns;
        this.gapPx = gapPx;
    }

    static int columns(int widthPx, int leastWidthPx, int gapPx, int most) {
        return Math.max(1, Math.min(most, (widthPx + gapPx) / (leastWidthPx + gapPx)));
    }

    @Override
    public void layoutContainer(Container parent) {
        arrange(parent, true);
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        return new Dimension(leastWidthPx, arrange(parent, false));
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return new Dimension(leastWidthPx, 0);
    }

    private int arrange(Container parent, boolean place) {
        Insets insets = parent.getInsets();
        int width = Math.max(leastWidthPx, parent.getWidth() - insets.left - insets.right);
        int columns =
                Math.min(columns(width, leastWidthPx, gapPx, mostColumns), Math.max(1, parent.getComponentCount()));
        int cardWidth = (width - (columns - 1) * gapPx) / columns;
        int[] bottoms = new int[columns];
        for (Component card : parent.getComponents()) {
            int shortest = shortest(bottoms);
            card.setSize(cardWidth, card.getHeight()); // wrapped text needs the width to know its height
            int height = card.getPreferredSize().height;
            if (place) {
                card.setBounds(
                        insets.left + shortest * (cardWidth + gapPx),
                        insets.top + bottoms[shortest],
                        cardWidth,
                        height);
            }
            bottoms[shortest] += height + gapPx;
        }
        return insets.top
                + insets.bottom
                + Math.max(0, Arrays.stream(bottoms).max().orElse(0) - gapPx);
    }

    private static int shortest(int[] bottoms) {
        int shortest = 0;
        for (int i = 1; i < bottoms.length; i++) {
            if (bottoms[i] < bottoms[shortest]) {
                shortest = i;
            }
        }
        return shortest;
    }

    @Override
    public void addLayoutComponent(String name, Component component) {
        // every card is treated alike
    }

    @Override
    public void removeLayoutComponent(Component component) {
        // nothing is remembered
    }
}
