package org.glintery.charts.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.glintery.charts.TestPictures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LieTest {

    /** Four patches; how they lie in the file: red, green above blue, white. */
    private static byte[] jpeg(int exifNumber) {
        BufferedImage image = TestPictures.painted(
                64,
                32,
                BufferedImage.TYPE_INT_RGB,
                (x, y) -> y < 16 ? (x < 32 ? 0xFFFF0000 : 0xFF00FF00) : (x < 32 ? 0xFF0000FF : 0xFFFFFFFF));
        byte[] plain = TestPictures.file(image, "jpeg");
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.write(plain, 0, 2);
        file.writeBytes(segment(exifNumber));
        file.write(plain, 2, plain.length - 2);
        return file.toByteArray();
    }

    /** Exif 2.32: an APP1 segment whose only tag is 0112h. */
    private static byte[] segment(int number) {
        ByteBuffer segment = ByteBuffer.allocate(36);
        segment.putShort((short) 0xFFE1).putShort((short) 34);
        segment.put("Exif\0\0MM".getBytes(StandardCharsets.ISO_8859_1))
                .putShort((short) 42)
                .putInt(8);
        segment.putShort((short) 1).putShort((short) 0x0112).putShort((short) 3).putInt(1);
        return segment.putShort((short) number).putShort((short) 0).putInt(0).array();
    }

    // Exif 2.32, tag 0112h: which sides of the shown picture the first row and the first column are.
    @ParameterizedTest
    @CsvSource({"0, RGBW", "1, RGBW", "2, GRWB", "3, WBGR", "4, BWRG", "5, RBGW", "6, BRWG", "7, WGBR", "8, GWRB"})
    void showsAPictureAsTheCameraWasHeld(int number, String patches) {
        SourcePicture picture = TestPictures.read(jpeg(number));
        assertThat(picture.width()).isEqualTo(number < 5 ? 64 : 32);
        assertThat(patches(picture)).isEqualTo(patches);
    }

    @Test
    void turnsToTheRight_whatIsShown() {
        SourcePicture picture = TestPictures.read(jpeg(1));
        assertThat(patches(picture.turned(1))).isEqualTo("BRWG");
        assertThat(patches(picture.turned(2))).isEqualTo("WBGR");
        assertThat(patches(picture.turned(-1))).isEqualTo("GWRB");
        SourcePicture mirrored = TestPictures.read(jpeg(5));
        assertThat(patches(mirrored.turned(4))).isEqualTo("RBGW");
        assertThat(patches(mirrored.turned(1))).isEqualTo("GRWB");
    }

    @ParameterizedTest
    @CsvSource({"1, 0, 0, R", "6, 0, 0, B", "8, 0, 0, G", "3, 0.5, 0, B", "7, 0.5, 0.5, R", "2, 0, 0.5, W"})
    void cropsWhatIsShown(int number, double left, double top, char patch) {
        SourcePicture picture = TestPictures.read(jpeg(number));
        PictureCut quarter = new PictureCut(
                (left + 0.1) * picture.width(),
                (top + 0.1) * picture.height(),
                0.3 * picture.width(),
                0.3 * picture.height());
        assertThat(letter(picture.averaged(quarter, 1, 1), 0)).isEqualTo(patch);
    }

    private static String patches(SourcePicture picture) {
        LightGrid grid = picture.averaged(new PictureCut(0, 0, picture.width(), picture.height()), 2, 2);
        StringBuilder letters = new StringBuilder();
        for (int cell = 0; cell < 4; cell++) {
            letters.append(letter(grid, cell));
        }
        return letters.toString();
    }

    private static char letter(LightGrid grid, int cell) {
        if (grid.red(cell) > 0.5) {
            return grid.green(cell) > 0.5 ? 'W' : 'R';
        }
        return grid.green(cell) > 0.5 ? 'G' : 'B';
    }
}
