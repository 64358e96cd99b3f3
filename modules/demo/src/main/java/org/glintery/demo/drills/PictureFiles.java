package org.glintery.demo.drills;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.glintery.api.workshop.Blob;

/** Pictures as files: few colours as PNG, paintings as JPEG. Any thread. */
public final class PictureFiles {
    private static final float PAINTING_QUALITY = 0.88f;
    private static final float SMALL = 0.2f;

    private PictureFiles() {}

    public static Blob png(BufferedImage picture) {
        return Blob.of("image/png", written(picture, "png", SMALL));
    }

    public static Blob jpeg(BufferedImage picture) {
        return Blob.of("image/jpeg", written(picture, "jpeg", PAINTING_QUALITY));
    }

    private static byte[] written(BufferedImage picture, String format, float quality) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName(format).next();
        var bytes = new ByteArrayOutputStream();
        try (var out = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(quality);
            writer.write(null, new IIOImage(picture, null, null), param);
        } catch (IOException e) {
            throw new UncheckedIOException("a picture could not be written to memory", e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
