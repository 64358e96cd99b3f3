package org.glintery.charts.picture;

import java.awt.image.BufferedImage;
import java.awt.image.ComponentSampleModel;
import java.awt.image.DataBufferByte;
import java.util.Optional;

/** Opaque pixels of three bytes each, as most photographs are held: read straight from their array. */
final class ByteRows implements LightRows {

    private final byte[] bytes;
    private final int start;
    private final int rowStep;
    private final int pixelStep;
    private final int[] offsets;
    private final double[] red;
    private final double[] green;
    private final double[] blue;

    private ByteRows(byte[] bytes, int start, ComponentSampleModel layout, double[][] light) {
        this.bytes = bytes;
        this.start = start;
        rowStep = layout.getScanlineStride();
        pixelStep = layout.getPixelStride();
        offsets = layout.getBandOffsets();
        red = light[0];
        green = light[1];
        blue = light[2];
    }

    /** Empty for pixels that are held in another way. @param light for each channel, by the byte */
    static Optional<LightRows> of(BufferedImage image, double[][] light) {
        var raster = image.getRaster();
        boolean fits = raster.getDataBuffer() instanceof DataBufferByte buffer
                && buffer.getNumBanks() == 1
                && raster.getSampleModel() instanceof ComponentSampleModel
                && raster.getNumBands() == 3
                && raster.getParent() == null;
        if (!fits) {
            return Optional.empty();
        }
        DataBufferByte buffer = (DataBufferByte) raster.getDataBuffer();
        return Optional.of(new ByteRows(
                buffer.getData(), buffer.getOffset(), (ComponentSampleModel) raster.getSampleModel(), light));
    }

    @Override
    public void add(int row, Spans spans, double weight, LightSums sums) {
        int rowStart = start + row * rowStep;
        add(rowStart + offsets[0], red, spans, weight, sums.red);
        add(rowStart + offsets[1], green, spans, weight, sums.green);
        add(rowStart + offsets[2], blue, spans, weight, sums.blue);
        for (int cell = 0; cell < sums.opaque.length; cell++) {
            sums.opaque[cell] += weight;
        }
    }

    private void add(int from, double[] light, Spans spans, double weight, double[] sums) {
        for (int cell = 0; cell < sums.length; cell++) {
            int at = from + spans.first[cell] * pixelStep;
            double sum = spans.firstShare[cell] * light[bytes[at] & 0xFF];
            int end = from + spans.last[cell] * pixelStep;
            if (end > at) {
                double inner = 0;
                for (at += pixelStep; at < end; at += pixelStep) {
                    inner += light[bytes[at] & 0xFF];
                }
                sum += inner * spans.innerShare + spans.lastShare[cell] * light[bytes[end] & 0xFF];
            }
            sums[cell] += weight * sum;
        }
    }
}
