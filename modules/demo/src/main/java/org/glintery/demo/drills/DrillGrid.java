package org.glintery.demo.drills;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A picture as drills: the place on the card of each cell's colour, row by row.
 *
 * @param used the card colours in it, most used first
 */
public record DrillGrid(int columns, int rows, int[] cells, List<Integer> used) {
    /** How much of each cell's error goes on to its neighbours: all of it would scatter single drills everywhere. */
    private static final float HANDED_ON = 0.45f;

    /**
     * Averages each cell, chooses the colours, then takes the nearest for each cell and hands part of the error on
     * (Floyd and Steinberg, Proc. SID 17(2):75-77, 1976, the rows run to and fro).
     *
     * @param most how many colours at most
     */
    public static DrillGrid of(BufferedImage picture, int columns, int rows, DemoCard card, int most) {
        float[] means = Averages.of(picture, columns, rows);
        List<Integer> kept = chosen(means, card, most);
        int[] cells = spread(means, columns, rows, card, new Nearest(card, kept));
        return new DrillGrid(columns, rows, cells, ranked(counts(cells, card.size())));
    }

    /** Drops again and again the colour whose cells lose least by going to their next nearest colour. */
    private static List<Integer> chosen(float[] means, DemoCard card, int most) {
        Nearest nearest = card.nearest();
        long[] counts = new long[card.size()];
        for (int i = 0; i < means.length; i += 3) {
            counts[nearest.of((int) means[i], (int) means[i + 1], (int) means[i + 2])]++;
        }
        List<Integer> kept = new ArrayList<>(ranked(counts));
        while (kept.size() > most) {
            Integer least = kept.stream()
                    .min(Comparator.comparingDouble((Integer colour) -> counts[colour] * toNext(card, kept, colour))
                            .thenComparing(colour -> colour))
                    .orElseThrow();
            kept.remove(least);
        }
        return kept;
    }

    private static double toNext(DemoCard card, List<Integer> kept, int colour) {
        return kept.stream()
                .filter(other -> other != colour)
                .mapToDouble(other -> card.difference(colour, other))
                .min()
                .orElse(0);
    }

    private static int[] spread(float[] means, int columns, int rows, DemoCard card, Nearest nearest) {
        int[] cells = new int[columns * rows];
        for (int y = 0; y < rows; y++) {
            int step = y % 2 == 0 ? 1 : -1;
            for (int n = 0; n < columns; n++) {
                int x = step > 0 ? n : columns - 1 - n;
                int at = y * columns + x;
                cells[at] = nearest.of(whole(means[3 * at]), whole(means[3 * at + 1]), whole(means[3 * at + 2]));
                int rgb = card.colour(cells[at]).rgb();
                for (int channel = 0; channel < 3; channel++) {
                    float error = (means[3 * at + channel] - (rgb >> 16 - 8 * channel & 255)) * HANDED_ON / 16;
                    hand(means, columns, rows, x + step, y, channel, 7 * error);
                    hand(means, columns, rows, x - step, y + 1, channel, 3 * error);
                    hand(means, columns, rows, x, y + 1, channel, 5 * error);
                    hand(means, columns, rows, x + step, y + 1, channel, error);
                }
            }
        }
        return cells;
    }

    private static void hand(float[] means, int columns, int rows, int x, int y, int channel, float error) {
        if (x >= 0 && x < columns && y < rows) {
            means[3 * (y * columns + x) + channel] += error;
        }
    }

    private static int whole(float channel) {
        return Math.max(0, Math.min(255, Math.round(channel)));
    }

    private static List<Integer> ranked(long[] counts) {
        return IntStream.range(0, counts.length)
                .filter(colour -> counts[colour] > 0)
                .boxed()
                .sorted(Comparator.comparingLong((Integer colour) -> -counts[colour])
                        .thenComparing(colour -> colour))
                .toList();
    }

    private static long[] counts(int[] cells, int colours) {
        long[] counts = new long[colours];
        for (int cell : cells) {
            counts[cell]++;
        }
        return counts;
    }

    /** How many cells have that colour of the card. */
    public long count(int colour) {
        return IntStream.of(cells).filter(cell -> cell == colour).count();
    }

    public int at(int x, int y) {
        return cells[y * columns + x];
    }
}
