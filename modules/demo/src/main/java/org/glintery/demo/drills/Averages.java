package org.glintery.demo.drills;

import java.awt.image.BufferedImage;

/** The mean colour of each cell of a picture, averaged in linear light; three channels a cell, 0 to 255. */
final class Averages {
    private static final double[] LINEAR = new double[256];

    static {
        for (int i = 0; i < LINEAR.length; i++) {
            LINEAR[i] = Math.pow(i / 255.0, 2.2);
        }
    }

    private Averages() {}

    static float[] of(BufferedImage picture, int columns, int rows) {
        float[] means = new float[3 * columns * rows];
        int width = picture.getWidth();
        int height = picture.getHeight();
        int[] pixels = picture.getRGB(0, 0, width, height, null, 0, width);
        for (int y = 0; y < rows; y++) {
            for (int x = 0; x < columns; x++) {
                int left = x * width / columns;
                int right = Math.max(left + 1, (x + 1) * width / columns);
                int top = y * height / rows;
                int bottom = Math.max(top + 1, (y + 1) * height / rows);
                double[] sum = new double[3];
                for (int j = top; j < bottom; j++) {
                    for (int i = left; i < right; i++) {
                        int rgb = pixels[j * width + i];
                        sum[0] += LINEAR[rgb >> 16 & 255];
                        sum[1] += LINEAR[rgb >> 8 & 255];
                        sum[2] += LINEAR[rgb & 255];
                    }
                }
                double count = (double) (right - left) * (bottom - top);
                for (int channel = 0; channel < 3; channel++) {
                    means[3 * (y * columns + x) + channel] = (float) (255 * Math.pow(sum[channel] / count, 1 / 2.2));
                }
            }
        }
        return means;
    }
}
