package org.glintery.charts.picture;

import java.util.stream.IntStream;

/** Averages a picture over the cells of a grid in light, by area: a pixel that lies in two cells counts in both. */
final class AreaAverage {

    private AreaAverage() {}

    /** In the picture's own primaries, as it lies in the file. Works on several threads; the sums do not depend on them. */
    static LightGrid of(LightRows picture, int width, int height, PictureCut part, int columns, int rows) {
        Spans across = new Spans(part.left(), part.width(), columns, width);
        Spans down = new Spans(part.top(), part.height(), rows, height);
        LightGrid grid = new LightGrid(columns, rows);
        IntStream.range(0, rows).parallel().forEach(row -> {
            LightSums sums = new LightSums(columns);
            for (int pixels = down.first[row]; pixels <= down.last[row]; pixels++) {
                picture.add(pixels, across, down.share(row, pixels), sums);
            }
            grid.setRow(row, sums);
        });
        return grid;
    }
}
