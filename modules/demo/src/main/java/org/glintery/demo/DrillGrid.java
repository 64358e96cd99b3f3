package org.glintery.demo;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A picture as drills: the index of a card colour for each cell.
 *
 * @param used the card colours in it, most used first
 */
record DrillGrid(int columns, int rows, int[] cells, List<Integer> used) {

    /** Averages each cell, takes the nearest colour, then folds the rarest colours into the most used. */
    static DrillGrid of(BufferedImage picture, int columns, int rows, DemoCard card, NearestTable table, int most) {
        int[] cells = new int[columns * rows];
        for (int y = 0; y < rows; y++) {
            for (int x = 0; x < columns; x++) {
                cells[y * columns + x] = table.of(average(picture, x, y, columns, rows));
            }
        }
        List<Integer> ranked = ranked(cells, card.size());
        List<Integer> kept = ranked.subList(0, Math.min(most, ranked.size()));
        int[] folded = new int[card.size()];
        for (int colour : ranked) {
            folded[colour] = kept.stream()
                    .min(Comparator.comparingDouble(k -> org.glintery.colour.Ciede2000.difference(
                            card.colour(colour).lab(), card.colour(k).lab())))
                    .orElseThrow();
        }
        for (int i = 0; i < cells.length; i++) {
            cells[i] = folded[cells[i]];
        }
        return new DrillGrid(columns, rows, cells, ranked(cells, card.size()));
    }

    private static int average(BufferedImage picture, int x, int y, int columns, int rows) {
        int left = x * picture.getWidth() / columns;
        int right = Math.max(left + 1, (x + 1) * picture.getWidth() / columns);
        int top = y * picture.getHeight() / rows;
        int bottom = Math.max(top + 1, (y + 1) * picture.getHeight() / rows);
        int red = 0;
        int green = 0;
        int blue = 0;
        int count = (right - left) * (bottom - top);
        for (int j = top; j < bottom; j++) {
            for (int i = left; i < right; i++) {
                int rgb = picture.getRGB(i, j);
                red += rgb >> 16 & 255;
                green += rgb >> 8 & 255;
                blue += rgb & 255;
            }
        }
        return red / count << 16 | green / count << 8 | blue / count;
    }

    private static List<Integer> ranked(int[] cells, int colours) {
        long[] counts = counts(cells, colours);
        List<Integer> used = new ArrayList<>();
        for (int i = 0; i < colours; i++) {
            if (counts[i] > 0) {
                used.add(i);
            }
        }
        used.sort(Comparator.comparingLong((Integer i) -> -counts[i]).thenComparing(i -> i));
        return List.copyOf(used);
    }

    private static long[] counts(int[] cells, int colours) {
        long[] counts = new long[colours];
        for (int cell : cells) {
            counts[cell]++;
        }
        return counts;
    }

    long count(int colour) {
        long count = 0;
        for (int cell : cells) {
            count += cell == colour ? 1 : 0;
        }
        return count;
    }
}
