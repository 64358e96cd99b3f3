package org.glintery.api.workshop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PictureFactsTest {
    private static final long SEED = 60_000;

    private static byte[] written(String format, int width, int height) throws IOException {
        var out = new ByteArrayOutputStream();
        assertThat(ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), format, out))
                .isTrue();
        return out.toByteArray();
    }

    @ParameterizedTest
    @CsvSource({"png, PNG", "jpeg, JPEG", "gif, GIF", "bmp, BMP", "tiff, TIFF"})
    void readsKindAndSize_asJavaWritesThem(String format, PictureKind kind) throws IOException {
        assertThat(PictureFacts.of(written(format, 321, 45))).contains(new PictureFacts(kind, 321, 45));
    }

    /** The headers as RFC 9649 gives them; nothing here writes this kind. */
    @Test
    void readsTheSizeOfWebp_inItsThreeForms() {
        assertThat(PictureFacts.of(webp("VP8 ", 26, 0x7FFF & 321, 45)))
                .contains(new PictureFacts(PictureKind.WEBP, 321, 45));
        ByteBuffer lossless = ByteBuffer.wrap(webp("VP8L", 20, 0, 0)).order(ByteOrder.LITTLE_ENDIAN);
        lossless.put(20, (byte) 0x2F).putInt(21, 320 | 44 << 14);
        assertThat(PictureFacts.of(lossless.array())).contains(new PictureFacts(PictureKind.WEBP, 321, 45));
        ByteBuffer extended = ByteBuffer.wrap(webp("VP8X", 20, 0, 0)).order(ByteOrder.LITTLE_ENDIAN);
        extended.putInt(24, 59_999).putInt(27, 59_999);
        assertThat(PictureFacts.of(extended.array())).contains(new PictureFacts(PictureKind.WEBP, 60_000, 60_000));
    }

    private static byte[] webp(String form, int at, int width, int height) {
        ByteBuffer bytes = ByteBuffer.allocate(40).order(ByteOrder.LITTLE_ENDIAN);
        bytes.put("RIFF".getBytes(StandardCharsets.US_ASCII))
                .putInt(32)
                .put(("WEBP" + form).getBytes(StandardCharsets.US_ASCII));
        return bytes.putShort(at, (short) width)
                .putShort(at + 2, (short) height)
                .array();
    }

    @Test
    void tellsWhatIsTooLarge() {
        assertThat(new PictureFacts(PictureKind.PNG, 12_000, 10_000).isTooLarge())
                .isFalse();
        assertThat(new PictureFacts(PictureKind.PNG, 12_001, 10_000).isTooLarge())
                .isTrue();
        assertThat(new PictureFacts(PictureKind.PNG, 32_001, 1).isTooLarge()).isTrue();
        assertThat(new PictureFacts(PictureKind.PNG, Integer.MAX_VALUE, Integer.MAX_VALUE).isTooLarge())
                .isTrue();
        assertThat(new PictureFacts(PictureKind.PNG, 60_000, 60_000).sizeWords())
                .isEqualTo("60\u2009000 x 60\u2009000");
    }

    /** A claim is believed, be it in a second place only. */
    @Test
    void believesTheLargerClaim() throws IOException {
        ByteBuffer gif = ByteBuffer.wrap(written("gif", 3, 2)).order(ByteOrder.LITTLE_ENDIAN);
        int frame = 13 + 3 * (2 << (gif.get(10) & 7));
        while (gif.get(frame) != 0x2C) {
            frame++;
        }
        gif.putShort(frame + 5, (short) 60_000).putShort(frame + 7, (short) 60_000);
        assertThat(PictureFacts.of(gif.array()).orElseThrow().isTooLarge()).isTrue();
        ByteBuffer bmp = ByteBuffer.wrap(written("bmp", 3, 2)).order(ByteOrder.LITTLE_ENDIAN);
        bmp.putInt(22, -60_000);
        assertThat(PictureFacts.of(bmp.array()).orElseThrow().isTooLarge()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "symbol,code", "BM", "GIF89a", "RIFF....WEBP", "II*\u0000"})
    void knowsNothing_ofWhatIsNoPictureOrTooShort(String bytes) {
        assertThat(PictureFacts.of(bytes.getBytes(StandardCharsets.ISO_8859_1))).isEmpty();
    }

    /** Java's own readers are the second opinion: what they would unpack is never larger than what we were told. */
    @Test
    void neverTellsLessThanJavaWouldUnpack_howeverPicturesAreSpoilt() throws IOException {
        var random = new Random(SEED);
        int compared = 0;
        for (String format : new String[] {"png", "jpeg", "gif", "bmp", "tiff"}) {
            byte[] whole = written(format, 37, 23);
            for (int round = 0; round < 2_000; round++) {
                byte[] spoilt = round % 7 == 0 ? Arrays.copyOf(whole, random.nextInt(whole.length)) : whole.clone();
                for (int i = random.nextInt(6); i >= 0 && spoilt.length > 8; i--) {
                    spoilt[8 + random.nextInt(Math.min(200, spoilt.length - 8))] = (byte) random.nextInt(256);
                }
                var facts = PictureFacts.of(spoilt);
                int[] size = asJavaReads(format, spoilt);
                if (facts.isPresent() && size.length == 2) {
                    compared++;
                    String what = "seed " + SEED + ", " + format + " in round " + round;
                    assertThat(facts.get().widthPx()).as(what).isGreaterThanOrEqualTo(size[0]);
                    assertThat(facts.get().heightPx()).as(what).isGreaterThanOrEqualTo(size[1]);
                }
            }
        }
        assertThat(compared).isGreaterThan(3_000);
    }

    private static int[] asJavaReads(String format, byte[] bytes) {
        ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
        try (var in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(in, true, true);
            return new int[] {reader.getWidth(0), reader.getHeight(0)};
        } catch (IOException | RuntimeException e) {
            // It could not make anything of it.
            return new int[0];
        } finally {
            reader.dispose();
        }
    }
}
