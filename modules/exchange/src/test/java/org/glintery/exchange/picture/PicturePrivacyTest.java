package org.glintery.exchange.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class PicturePrivacyTest {
    private static final String SECRET = "59.9139N 10.7522E";

    private static BufferedImage image() {
        var image = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 30; y++) {
            for (int x = 0; x < 40; x++) {
                image.setRGB(x, y, x * 6 << 16 | y * 8 << 8 | 90);
            }
        }
        return image;
    }

    private static byte[] written(String format) throws IOException {
        var out = new ByteArrayOutputStream();
        assertThat(ImageIO.write(image(), format, out)).isTrue();
        return out.toByteArray();
    }

    private static byte[] joined(byte[]... parts) {
        var out = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            out.writeBytes(part);
        }
        return out.toByteArray();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] segment(int marker, byte[] content) {
        return ByteBuffer.allocate(content.length + 4)
                .put((byte) 0xFF)
                .put((byte) marker)
                .putShort((short) (content.length + 2))
                .put(content)
                .array();
    }

    private static byte[] chunk(String type, byte[] content) {
        var crc = new CRC32();
        crc.update(bytes(type));
        crc.update(content);
        return ByteBuffer.allocate(content.length + 12)
                .putInt(content.length)
                .put(bytes(type))
                .put(content)
                .putInt((int) crc.getValue())
                .array();
    }

    /** Exif data with an orientation, and a place in words behind it. */
    private static byte[] exif(int orientation) {
        byte[] whole = ExifOrientation.segment(orientation);
        return joined(Arrays.copyOfRange(whole, 4, whole.length), bytes(SECRET));
    }

    private static void assertSamePicture(byte[] first, byte[] second) throws IOException {
        BufferedImage a = ImageIO.read(new ByteArrayInputStream(first));
        BufferedImage b = ImageIO.read(new ByteArrayInputStream(second));
        assertThat(b.getRGB(0, 0, 40, 30, null, 0, 40)).isEqualTo(a.getRGB(0, 0, 40, 30, null, 0, 40));
    }

    @Test
    void takesPlacesCommentsAndWhatFollowsTheEnd_outOfAJpeg() throws IOException {
        byte[] plain = written("jpeg");
        byte[] told = joined(
                Arrays.copyOf(plain, 2),
                segment(0xE1, exif(6)),
                segment(0xE1, bytes("http://ns.adobe.com/xap/1.0/\0" + SECRET)),
                segment(0xED, bytes("Photoshop 3.0\0" + SECRET)),
                segment(0xFE, bytes(SECRET)),
                segment(0xE2, bytes("ICC_PROFILE\0a profile")),
                Arrays.copyOfRange(plain, 2, plain.length),
                bytes(SECRET));
        byte[] cleaned = PicturePrivacy.without(told).orElseThrow();
        String text = new String(cleaned, StandardCharsets.ISO_8859_1);
        assertThat(text).doesNotContain(SECRET).contains("ICC_PROFILE").contains("JFIF");
        assertThat(cleaned).startsWith(joined(Arrays.copyOf(plain, 2), ExifOrientation.segment(6)));
        assertThat(cleaned).endsWith(0xFF, 0xD9);
        assertSamePicture(plain, PicturePrivacy.without(plain).orElseThrow());
        assertThat(PicturePrivacy.without(plain)).hasValue(plain);
    }

    @Test
    void forgetsAnOrientation_thatIsTheUsualOne() throws IOException {
        byte[] plain = written("jpeg");
        byte[] told =
                joined(Arrays.copyOf(plain, 2), segment(0xE1, exif(1)), Arrays.copyOfRange(plain, 2, plain.length));
        assertThat(PicturePrivacy.without(told)).hasValue(plain);
    }

    @Test
    void takesTextTimesAndCameraData_outOfAPng() throws IOException {
        byte[] plain = written("png");
        int afterHeader = 8 + 25;
        byte[] told = joined(
                Arrays.copyOf(plain, afterHeader),
                chunk("eXIf", bytes(SECRET)),
                chunk("tEXt", bytes("Location\0" + SECRET)),
                chunk("iTXt", bytes(SECRET)),
                chunk("zTXt", bytes(SECRET)),
                chunk("tIME", new byte[7]),
                chunk("prVt", bytes(SECRET)),
                chunk("gAMA", new byte[] {0, 0, (byte) 0xB1, (byte) 0x8F}),
                Arrays.copyOfRange(plain, afterHeader, plain.length),
                bytes(SECRET));
        byte[] cleaned = PicturePrivacy.without(told).orElseThrow();
        assertThat(new String(cleaned, StandardCharsets.ISO_8859_1))
                .doesNotContain(SECRET)
                .doesNotContain("tIME")
                .contains("gAMA");
        assertSamePicture(plain, cleaned);
        assertThat(PicturePrivacy.without(plain)).hasValue(plain);
    }

    @Test
    void givesNothing_forWhatItCannotBeSureOf() throws IOException {
        assertThat(PicturePrivacy.without(bytes("GIF89a and more"))).isEmpty();
        assertThat(PicturePrivacy.without(bytes("not a picture"))).isEmpty();
        assertThat(PicturePrivacy.without(new byte[0])).isEmpty();
        for (String format : new String[] {"png", "jpeg"}) {
            byte[] plain = written(format);
            assertThat(PicturePrivacy.without(Arrays.copyOf(plain, plain.length - 2)))
                    .isEmpty();
        }
    }

    @Test
    void neverThrows_whateverTheBytes() throws IOException {
        long seed = 4_711;
        var random = new Random(seed);
        for (int round = 0; round < 2_000; round++) {
            byte[] spoilt = joined(written(round % 2 == 0 ? "jpeg" : "png"));
            if (round % 3 == 0) {
                spoilt = joined(
                        Arrays.copyOf(spoilt, 2), segment(0xE1, exif(6)), Arrays.copyOfRange(spoilt, 2, spoilt.length));
            }
            for (int i = 0; i < 6; i++) {
                spoilt[2 + random.nextInt(Math.min(60, spoilt.length - 2))] = (byte) random.nextInt(256);
            }
            byte[] cut = Arrays.copyOf(spoilt, 2 + random.nextInt(spoilt.length - 2));
            try {
                PicturePrivacy.without(spoilt);
                PicturePrivacy.without(cut);
            } catch (RuntimeException e) {
                throw new AssertionError("seed " + seed + ", round " + round, e);
            }
        }
    }
}
