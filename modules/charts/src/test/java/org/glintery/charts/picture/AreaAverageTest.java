package org.glintery.charts.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.util.SplittableRandom;
import org.glintery.charts.TestPictures;
import org.glintery.colour.LinearRgb;
import org.glintery.colour.Srgb;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AreaAverageTest {

    /** A second way: for each cell all pixels with the area that they share with it. */
    private static double[] plainly(BufferedImage image, PictureCut part, int columns, int rows, int cell) {
        double[] sums = new double[4];
        double left = part.left() + cell % columns * part.width() / columns;
        double top = part.top() + cell / columns * part.height() / rows;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                double across = Math.min(x + 1, left + part.width() / columns) - Math.max(x, left);
                double down = Math.min(y + 1, top + part.height() / rows) - Math.max(y, top);
                if (across > 0 && down > 0) {
                    int pixel = image.getRGB(x, y);
                    double area = across * down * (pixel >>> 24);
                    LinearRgb light = Srgb.ofRgb(pixel).linear();
                    sums[0] += area * light.red();
                    sums[1] += area * light.green();
                    sums[2] += area * light.blue();
                    sums[3] += area;
                }
            }
        }
        return new double[] {sums[0] / sums[3], sums[1] / sums[3], sums[2] / sums[3]};
    }

    private static BufferedImage noise(int width, int height, int type, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        return TestPictures.painted(width, height, type, (x, y) -> random.nextInt() | 0x80000000);
    }

    @ParameterizedTest
    @CsvSource({
        "40, 30, 8, 6, 0, 0, 40, 30",
        "41, 29, 7, 5, 0, 0, 41, 29",
        "10, 7, 33, 20, 0, 0, 10, 7",
        "37, 53, 5, 50, 3.25, 8.5, 30.5, 40",
        "1, 1, 3, 2, 0, 0, 1, 1",
        "300, 2, 299, 1, 0, 0, 300, 2"
    })
    void averagesByAreaInLight(
            int width, int height, int columns, int rows, double left, double top, double wide, double high) {
        PictureCut part = new PictureCut(left, top, wide, high);
        for (int type :
                new int[] {BufferedImage.TYPE_3BYTE_BGR, BufferedImage.TYPE_INT_RGB, BufferedImage.TYPE_4BYTE_ABGR}) {
            long seed = 71 + type;
            BufferedImage image = noise(width, height, type, seed);
            LightGrid grid = TestPictures.read(TestPictures.file(image, "png")).averaged(part, columns, rows);
            for (int cell = 0; cell < grid.cells(); cell++) {
                double[] expected = plainly(image, part, columns, rows, cell);
                String as = "seed " + seed + ", cell " + cell;
                assertThat(grid.red(cell)).as(as).isCloseTo(expected[0], within(1e-12));
                assertThat(grid.green(cell)).as(as).isCloseTo(expected[1], within(1e-12));
                assertThat(grid.blue(cell)).as(as).isCloseTo(expected[2], within(1e-12));
            }
        }
    }

    // Half black and half white is half the light, which sRGB encodes as 188 (IEC 61966-2-1), not as 128.
    @Test
    void makesHalfTheLightOfAChessboard() {
        BufferedImage board = TestPictures.painted(
                16, 16, BufferedImage.TYPE_INT_RGB, (x, y) -> (x + y) % 2 == 0 ? 0xFFFFFFFF : 0xFF000000);
        LightGrid grid = TestPictures.averaged(TestPictures.file(board, "png"), 4, 4);
        assertThat(grid.green(5)).isCloseTo(0.5, within(1e-12));
        assertThat(new LinearRgb(grid.red(5), grid.green(5), grid.blue(5)).srgb())
                .isEqualTo(new Srgb(188, 188, 188));
    }

    @Test
    void leavesCellsBlank_whereLessThanHalfIsOpaque() {
        BufferedImage image = TestPictures.painted(
                8, 4, BufferedImage.TYPE_INT_ARGB, (x, y) -> x < 3 ? 0xFFFF0000 : x < 4 ? 0x80FF0000 : 0x0000FF00);
        LightGrid grid = TestPictures.averaged(TestPictures.file(image, "png"), 4, 1);
        assertThat(grid.isBlank(0)).isFalse();
        assertThat(grid.isBlank(1)).isFalse();
        assertThat(grid.red(1)).isCloseTo(1, within(1e-12));
        assertThat(grid.green(1)).isZero();
        assertThat(grid.isBlank(2)).isTrue();
        assertThat(grid.isBlank(3)).isTrue();
    }
}
