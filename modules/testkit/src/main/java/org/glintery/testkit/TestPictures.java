package org.glintery.testkit;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Base64;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Small pictures for tests. */
public final class TestPictures {
    private TestPictures() {}

    /** A black PNG. */
    public static byte[] png(int widthPx, int heightPx) {
        var out = new ByteArrayOutputStream();
        try {
            ImageIO.write(new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_INT_RGB), "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** Four patches of colour, 32 x 32, written with ImageMagick 6.9.11: a kind that the JDK reads with a plug-in alone. */
    public static byte[] webp() {
        return Base64.getDecoder()
                .decode(
                        "UklGRnIAAABXRUJQVlA4IGYAAAAwBQCdASogACAAPjESiEKiISEYBgAgAwS0AE6ZQjgbwD8AP2q/1XPn7E9gMz8DW5CVYAD+7v+f/uoJmXwd/9C4/cxPptk0fnYGkjrHis17/Lim4xPPulTDV/7o24WNBwSA+0KgAAA=");
    }

    /** The first bytes of a JPEG: its size is told, and nothing of it is there to be drawn. */
    public static byte[] jpegThatBreaksOff() {
        var out = new ByteArrayOutputStream();
        try {
            ImageIO.write(new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB), "jpeg", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Arrays.copyOf(out.toByteArray(), 300);
    }

    /**
     * A PNG of a few bytes that claims a size. Width and height stand at byte 16, the checksum of their chunk at byte 29;
     * ISO/IEC 15948, 11.2.2.
     */
    public static byte[] claiming(int widthPx, int heightPx) {
        ByteBuffer bytes = ByteBuffer.wrap(png(8, 8));
        bytes.putInt(16, widthPx).putInt(20, heightPx);
        var crc = new CRC32();
        crc.update(bytes.array(), 12, 17);
        return bytes.putInt(29, (int) crc.getValue()).array();
    }
}
