package org.glintery.charts;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.function.IntBinaryOperator;
import javax.imageio.ImageIO;
import org.glintery.charts.picture.LightGrid;
import org.glintery.charts.picture.PictureCut;
import org.glintery.charts.picture.PictureFile;
import org.glintery.charts.picture.SourcePicture;

/** Pictures for tests. */
public final class TestPictures {

    private TestPictures() {}

    /** A picture by the colour of each pixel, with alpha. */
    public static BufferedImage painted(int width, int height, int type, IntBinaryOperator argb) {
        BufferedImage image = new BufferedImage(width, height, type);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                image.setRGB(x, y, argb.applyAsInt(x, y));
            }
        }
        return image;
    }

    /** The bytes of a file. @param format as the JDK names it */
    public static byte[] file(BufferedImage image, String format) {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        try {
            if (!ImageIO.write(image, format, file)) {
                throw new IllegalArgumentException("nothing here writes " + format);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file.toByteArray();
    }

    /** A file beside this class. */
    public static byte[] resource(String name) {
        try (InputStream in = TestPictures.class.getResourceAsStream(name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static SourcePicture read(byte[] file) {
        return PictureFile.read(file).orThrow();
    }

    /** The whole picture averaged over a grid. */
    public static LightGrid averaged(byte[] file, int columns, int rows) {
        SourcePicture picture = read(file);
        return picture.averaged(new PictureCut(0, 0, picture.width(), picture.height()), columns, rows);
    }
}
