package org.glintery.workbench.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.EventQueue;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.Random;
import javax.imageio.ImageIO;
import org.glintery.api.Result;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.NewPicture;
import org.glintery.api.workshop.Picture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShownPicturesTest {
    /** Four patches of colour, 32 x 32, written with ImageMagick 6.9.11. */
    private static final String WEBP =
            "UklGRnIAAABXRUJQVlA4IGYAAAAwBQCdASogACAAPjESiEKiISEYBgAgAwS0AE6ZQjgbwD8AP2q/1XPn7E9gMz8DW5CVYAD+7v+f/uoJmXwd/9C4/cxPptk0fnYGkjrHis17/Lim4xPPulTDV/7o24WNBwSA+0KgAAA=";

    private final ShownPictures intake = new ShownPictures();

    @TempDir
    Path temp;

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpeg", "webp", "tiff", "gif", "bmp"})
    void givesThePictureWithItsBytes(String format) throws IOException {
        byte[] bytes = picture(format);
        Path file = Files.write(temp.resolve("Slip at dusk." + format), bytes);

        NewPicture read = intake.read(file).orThrow();

        assertThat(read.picture())
                .isEqualTo(new Picture(Blob.hash(bytes), "image/" + format, "Slip at dusk." + format));
        assertThat(read.blob().bytes()).isEqualTo(bytes);
    }

    @Test
    void refusesWhatIsNoPicture_byName() throws IOException {
        refuses(
                Files.writeString(temp.resolve("a.png"), "symbol,code"),
                "not-a-picture",
                "a.png: This is not a picture");
        refuses(Files.write(temp.resolve("b.png"), new byte[0]), "not-a-picture", "b.png: This is not a picture");
        refuses(temp.resolve("c.png"), "unreadable", "c.png can't be read");
        refuses(temp, "unreadable", temp.getFileName() + " can't be read");
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpeg", "webp", "tiff", "gif", "bmp"})
    void refusesAPictureThatBreaksOffBehindItsHeader_andSaysWhichKindsCanBeRead(String format) throws IOException {
        byte[] whole = picture(format);
        byte[] cut = Arrays.copyOf(whole, Math.min(300, whole.length / 2));
        refuses(
                Files.write(temp.resolve("cut." + format), cut),
                "not-a-picture",
                "cut." + format
                        + ": This is not a picture that can be read here. Nothing was changed. Use a PNG, JPEG, WebP, "
                        + "TIFF, GIF or BMP file.");
    }

    @Test
    void refusesAJpegThatIsBrokenInItsMiddleOrBreaksOff() throws IOException {
        byte[] jpeg = large();
        byte[] zeroed = jpeg.clone();
        Arrays.fill(zeroed, jpeg.length / 2, jpeg.length / 2 + 400, (byte) 0);
        byte[] without = new byte[jpeg.length - 300];
        System.arraycopy(jpeg, 0, without, 0, jpeg.length / 2);
        System.arraycopy(jpeg, jpeg.length / 2 + 300, without, jpeg.length / 2, without.length - jpeg.length / 2);

        refuses(Files.write(temp.resolve("e.jpg"), zeroed), "damaged-picture", "e.jpg: This picture is damaged");
        refuses(Files.write(temp.resolve("f.jpg"), without), "damaged-picture", "f.jpg: This picture is damaged");
        refuses(
                Files.write(temp.resolve("g.jpg"), Arrays.copyOf(jpeg, jpeg.length * 9 / 10)),
                "damaged-picture",
                "g.jpg: This picture is damaged");
    }

    @Test
    void takesAJpegThatLacksOnlyItsEndMark_orGoesOnBehindIt() throws IOException {
        byte[] jpeg = large();
        byte[] longer = Arrays.copyOf(jpeg, jpeg.length + 500);
        Arrays.fill(longer, jpeg.length, longer.length, (byte) 0xA5);

        intake.of(jpeg, "").orThrow();
        intake.of(Arrays.copyOf(jpeg, jpeg.length - 2), "").orThrow();
        intake.of(longer, "").orThrow();
    }

    private static byte[] large() throws IOException {
        return written(slopes(400, 300), "jpeg");
    }

    /** Slowly changing and a little grainy, as photos are. */
    private static BufferedImage slopes(int width, int height) {
        var slopes = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        var random = new Random(7);
        for (int i = 0; i < width * height; i++) {
            int red = i % width * 255 / width;
            int green = i / width * 255 / height;
            slopes.setRGB(i % width, i / width, red << 16 | green << 8 | random.nextInt(64));
        }
        return slopes;
    }

    /** PNG: width and height stand at byte 16 (ISO/IEC 15948, 11.2.2). */
    @Test
    void refusesAPictureThatClaimsToBeHuge() throws IOException {
        byte[] lying = ByteBuffer.wrap(picture("png"))
                .putInt(16, 60_000)
                .putInt(20, 60_000)
                .array();
        refuses(Files.write(temp.resolve("d.png"), lying), "picture-too-large", "d.png: This picture says it is 60");
    }

    @Test
    void isNotForTheEventThread() throws IOException {
        byte[] picture = picture("png");
        assertThatThrownBy(() -> EventQueue.invokeAndWait(() -> intake.of(picture, "")))
                .isInstanceOf(InvocationTargetException.class)
                .hasCauseInstanceOf(IllegalStateException.class);
    }

    private void refuses(Path file, String code, String text) {
        assertThat(intake.read(file)).isInstanceOfSatisfying(Result.Refused.class, refused -> {
            assertThat(refused.refusal().code()).isEqualTo(code);
            assertThat(refused.refusal().text()).startsWith(text).contains("Nothing was changed");
        });
    }

    private static byte[] picture(String format) throws IOException {
        if (format.equals("webp")) {
            return Base64.getDecoder().decode(WEBP);
        }
        return written(noise(40, 30), format);
    }

    private static BufferedImage noise(int width, int height) {
        var noise = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        var random = new Random(7);
        for (int i = 0; i < width * height; i++) {
            noise.setRGB(i % width, i / width, random.nextInt(1 << 24));
        }
        return noise;
    }

    private static byte[] written(BufferedImage noise, String format) throws IOException {
        var out = new ByteArrayOutputStream();
        ImageIO.write(noise, format, out);
        return out.toByteArray();
    }
}
