package org.glintery.charts.file;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import org.glintery.api.charts.Chart;
import org.glintery.colour.Srgb;

/** A chart as a picture with one pixel a cell, in the colours of its lines; cells without a drill are transparent. */
public final class ChartPicture {

    private static final int OPAQUE = 0xFF000000;

    private ChartPicture() {}

    /** The bytes of a PNG file. Any thread. */
    public static byte[] png(Chart chart) {
        int columns = chart.grid().columns();
        int rows = chart.grid().rows();
        boolean whole = chart.drills() == chart.grid().cells();
        BufferedImage image =
                new BufferedImage(columns, rows, whole ? BufferedImage.TYPE_INT_RGB : BufferedImage.TYPE_INT_ARGB);
        int[] colours = chart.lines().stream()
                .mapToInt(line ->
                        OPAQUE | Srgb.parse(line.hex()).orElse(Srgb.WHITE).rgb())
                .toArray();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                int line = chart.line(column, row);
                image.setRGB(column, row, line == Chart.NO_DRILL ? 0 : colours[line]);
            }
        }
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", png);
        } catch (IOException e) {
            throw new UncheckedIOException("memory does not fail", e);
        }
        return png.toByteArray();
    }
}
