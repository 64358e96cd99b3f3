package org.glintery.charts.picture;

import java.awt.image.Raster;

/** Pixels of grey or colour in any depth, with or without transparency. */
final class SampleRows implements LightRows {

    private final Raster raster;
    private final double[][] light;
    private final boolean grey;
    private final double opaqueAt;

    /**
     * @param light for each channel, by the sample
     * @param opaqueAt the sample of the last band at which a pixel is opaque; 0 when no band tells
     */
    SampleRows(Raster raster, double[][] light, int opaqueAt) {
        this.raster = raster;
        this.light = light;
        this.opaqueAt = opaqueAt;
        grey = raster.getNumBands() < 3;
    }

    @Override
    public void add(int row, Spans spans, double weight, LightSums sums) {
        int bands = raster.getNumBands();
        int left = spans.first[0];
        int width = spans.last[spans.last.length - 1] - left + 1;
        int[] samples = raster.getPixels(left + raster.getMinX(), row + raster.getMinY(), width, 1, (int[]) null);
        for (int cell = 0; cell < sums.red.length; cell++) {
            for (int pixel = spans.first[cell]; pixel <= spans.last[cell]; pixel++) {
                int at = (pixel - left) * bands;
                double share = weight * spans.share(cell, pixel);
                double opaque = opaqueAt == 0 ? share : share * samples[at + bands - 1] / opaqueAt;
                sums.red[cell] += opaque * light[0][samples[at]];
                sums.green[cell] += opaque * light[1][samples[grey ? at : at + 1]];
                sums.blue[cell] += opaque * light[2][samples[grey ? at : at + 2]];
                sums.opaque[cell] += opaque;
            }
        }
    }
}
