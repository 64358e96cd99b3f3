package org.glintery.charts.picture;

import java.awt.image.BufferedImage;

/** Pixels that are held in any other way, such as by a table of colours: as the image itself gives them in three bytes. */
final class ConvertedRows implements LightRows {

    private final BufferedImage image;
    private final double[][] light;

    /** @param light for each channel, by the byte */
    ConvertedRows(BufferedImage image, double[][] light) {
        this.image = image;
        this.light = light;
    }

    @Override
    public void add(int row, Spans spans, double weight, LightSums sums) {
        int left = spans.first[0];
        int width = spans.last[spans.last.length - 1] - left + 1;
        int[] pixels = image.getRGB(left, row, width, 1, null, 0, width);
        for (int cell = 0; cell < sums.red.length; cell++) {
            for (int at = spans.first[cell]; at <= spans.last[cell]; at++) {
                int pixel = pixels[at - left];
                double opaque = weight * spans.share(cell, at) * (pixel >>> 24) / 255;
                sums.red[cell] += opaque * light[0][pixel >> 16 & 0xFF];
                sums.green[cell] += opaque * light[1][pixel >> 8 & 0xFF];
                sums.blue[cell] += opaque * light[2][pixel & 0xFF];
                sums.opaque[cell] += opaque;
            }
        }
    }
}
