package org.glintery.charts.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import org.glintery.api.Result;
import org.glintery.charts.TestPictures;
import org.glintery.colour.Ciede2000;
import org.glintery.colour.Lab;
import org.glintery.colour.LinearRgb;
import org.glintery.colour.Srgb;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PictureFileTest {

    /** What the four quarters of every picture here show, row after row. */
    private static final List<Srgb> PATCHES =
            List.of(new Srgb(200, 80, 40), new Srgb(40, 160, 90), new Srgb(50, 70, 180), new Srgb(240, 230, 210));

    private static BufferedImage patches(int type) {
        return TestPictures.painted(
                32,
                32,
                type,
                (x, y) -> 0xFF000000 | PATCHES.get(y / 16 * 2 + x / 16).rgb());
    }

    /** Rounding of light to Lab and back. */
    private static final double ROUNDING = 1e-9;

    private static void showsPatches(byte[] file, double tolerance) {
        LightGrid grid = TestPictures.averaged(file, 2, 2);
        for (int cell = 0; cell < 4; cell++) {
            Lab lab = Lab.ofD65(new LinearRgb(grid.red(cell), grid.green(cell), grid.blue(cell)).xyz());
            assertThat(Ciede2000.difference(lab, PATCHES.get(cell).lab()))
                    .as("cell %d is %s", cell, lab)
                    .isLessThanOrEqualTo(tolerance + ROUNDING);
        }
    }

    @ParameterizedTest
    @CsvSource({"png, 0", "bmp, 0", "tiff, 0", "gif, 0", "jpeg, 1.5"})
    void readsWhatTheJdkWrites(String format, double tolerance) {
        showsPatches(TestPictures.file(patches(BufferedImage.TYPE_INT_RGB), format), tolerance);
    }

    // Made with ImageMagick 6.9.11 from the same patches.
    @ParameterizedTest
    @CsvSource({
        "patches.webp, 2",
        "patches-lossless.webp, 0",
        "patches-cmyk.jpg, 3",
        "patches-animated.gif, 0.5",
        "patches-animated.webp, 2"
    })
    void readsWebpCmykAndTheFirstOfAnAnimation(String name, double tolerance) {
        showsPatches(TestPictures.resource(name), tolerance);
    }

    @Test
    void readsTablesOfColoursGreysAndSixteenBits() {
        showsPatches(TestPictures.file(patches(BufferedImage.TYPE_BYTE_INDEXED), "png"), 12);
        BufferedImage grey = TestPictures.painted(2, 1, BufferedImage.TYPE_BYTE_GRAY, (x, y) -> 0xFF000000);
        grey.getRaster().setSample(1, 0, 0, 188);
        LightGrid greys = TestPictures.averaged(TestPictures.file(grey, "png"), 2, 1);
        assertThat(greys.red(1)).isCloseTo(new Srgb(188, 0, 0).linear().red(), within(1e-12));
        assertThat(greys.blue(1)).isEqualTo(greys.red(1));

        BufferedImage fine = new BufferedImage(2, 1, BufferedImage.TYPE_USHORT_GRAY);
        fine.getRaster().setSample(0, 0, 0, 188 * 257);
        fine.getRaster().setSample(1, 0, 0, 188 * 257 + 128);
        LightGrid sixteen = TestPictures.averaged(TestPictures.file(fine, "png"), 2, 1);
        assertThat(sixteen.green(0)).isCloseTo(new Srgb(0, 188, 0).linear().green(), within(1e-12));
        assertThat(sixteen.green(1)).isGreaterThan(sixteen.green(0));
    }

    /** Numbers of Display P3: the same ones mean stronger colours than in sRGB. */
    @ParameterizedTest
    @ValueSource(strings = {"patches-p3.jpg", "patches-p3.webp", "patches-p3.tiff", "png"})
    void takesNumbersInTheEmbeddedProfile(String name) {
        byte[] file =
                name.equals("png") ? withProfile(patches(BufferedImage.TYPE_INT_RGB)) : TestPictures.resource(name);
        LightGrid grid = TestPictures.averaged(file, 2, 2);
        for (int cell = 0; cell < 4; cell++) {
            LinearRgb number = PATCHES.get(cell).linear();
            // CSS Color 4, section 18: light of Display P3 in the primaries of sRGB
            assertThat(grid.red(cell)).isCloseTo(1.2249 * number.red() - 0.2249 * number.green(), within(0.02));
            assertThat(grid.green(cell)).isCloseTo(-0.0420 * number.red() + 1.0420 * number.green(), within(0.02));
            assertThat(grid.blue(cell))
                    .isCloseTo(-0.0196 * number.red() - 0.0786 * number.green() + 1.0983 * number.blue(), within(0.02));
        }
        assertThat(grid.red(0)).isGreaterThan(PATCHES.get(0).linear().red() + 0.07);
    }

    private static byte[] withProfile(BufferedImage image) {
        byte[] profile = IccProfiles.matrix(ColourProfileTest.DISPLAY_P3, IccProfiles.srgbCurve());
        Deflater deflater = new Deflater();
        deflater.setInput(profile);
        deflater.finish();
        byte[] deflated = new byte[profile.length + 100];
        int length = deflater.deflate(deflated);
        ByteBuffer chunk = ByteBuffer.allocate(3 + length);
        chunk.put("p".getBytes(StandardCharsets.US_ASCII))
                .put((byte) 0)
                .put((byte) 0)
                .put(deflated, 0, length);
        byte[] png = TestPictures.file(image, "png");
        int afterHeader = 8 + 25;
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.write(png, 0, afterHeader);
        file.writeBytes(chunk("iCCP", chunk.array()));
        file.write(png, afterHeader, png.length - afterHeader);
        return file.toByteArray();
    }

    private static byte[] chunk(String name, byte[] content) {
        CRC32 crc = new CRC32();
        crc.update(name.getBytes(StandardCharsets.US_ASCII));
        crc.update(content);
        return ByteBuffer.allocate(12 + content.length)
                .putInt(content.length)
                .put(name.getBytes(StandardCharsets.US_ASCII))
                .put(content)
                .putInt((int) crc.getValue())
                .array();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "GIF", "no picture at all", "<svg xmlns='http://www.w3.org/2000/svg'/>", "%PDF-1.7"})
    void refusesWhatIsNoPicture(String text) {
        refused(text.getBytes(StandardCharsets.UTF_8), "picture-of-no-kind");
    }

    @Test
    void refusesAPictureOfAnEnormousSize_fromItsFirstBytes() {
        byte[] png = TestPictures.file(patches(BufferedImage.TYPE_INT_RGB), "png");
        ByteBuffer.wrap(png).putInt(16, 30_000).putInt(20, 30_000);
        assertThat(refused(png, "picture-too-large"))
                .contains("30\u2009000 x 30\u2009000")
                .contains("Nothing was made");
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpeg", "bmp", "gif", "tiff", "patches.webp", "patches-cmyk.jpg"})
    void refusesOrWarns_whenTheFileIsCutShort(String kind) {
        byte[] whole = kind.contains(".")
                ? TestPictures.resource(kind)
                : TestPictures.file(patches(BufferedImage.TYPE_INT_RGB), kind);
        for (int length = 0; length < whole.length; length += Math.max(1, whole.length / 60)) {
            Result<SourcePicture> read = PictureFile.read(Arrays.copyOf(whole, length));
            if (read instanceof Result.Refused<SourcePicture> no) {
                assertThat(no.refusal().text()).contains("can");
            } else {
                assertThat(((Result.Ok<SourcePicture>) read).value().width()).isPositive();
            }
        }
    }

    @Test
    void answersForAnyDamage() {
        long seed = 91;
        Random random = new Random(seed);
        List<byte[]> files = List.of(
                TestPictures.file(patches(BufferedImage.TYPE_INT_RGB), "png"),
                TestPictures.file(patches(BufferedImage.TYPE_INT_RGB), "jpeg"),
                TestPictures.file(patches(BufferedImage.TYPE_INT_RGB), "gif"),
                TestPictures.resource("patches.webp"),
                TestPictures.resource("patches-p3.tiff"));
        for (int i = 0; i < 1_500; i++) {
            byte[] damaged = files.get(i % files.size()).clone();
            for (int k = 0; k <= random.nextInt(5); k++) {
                damaged[random.nextInt(damaged.length)] = (byte) random.nextInt();
            }
            assertThat(PictureFile.read(damaged)).as("seed %d, %d", seed, i).isNotNull();
        }
    }

    @Test
    void readsOnePixel() {
        BufferedImage one = TestPictures.painted(1, 1, BufferedImage.TYPE_INT_RGB, (x, y) -> 0xFF102030);
        LightGrid grid = TestPictures.averaged(TestPictures.file(one, "png"), 5, 3);
        assertThat(grid.green(14)).isCloseTo(new Srgb(0, 0x20, 0).linear().green(), within(1e-12));
    }

    private static String refused(byte[] file, String code) {
        Result<SourcePicture> read = PictureFile.read(file);
        assertThat(read).isInstanceOf(Result.Refused.class);
        var refusal = ((Result.Refused<SourcePicture>) read).refusal();
        assertThat(refusal.code()).isEqualTo(code);
        return refusal.text();
    }
}
