package org.glintery.workbench.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.glintery.api.Result;
import org.junit.jupiter.api.Test;

class PictureBytesTest {
    @Test
    void scalesDown_keepingProportions() throws IOException {
        BufferedImage scaled = PictureBytes.scaled(png(1200, 800), 300, 300).orThrow();

        assertThat(scaled.getWidth()).isEqualTo(300);
        assertThat(scaled.getHeight()).isEqualTo(200);
    }

    /** Four patches of colour, 32 x 32, written with ImageMagick 6.9.11. */
    @Test
    void drawsWebP_inItsColours() {
        byte[] webp = Base64.getDecoder()
                .decode(
                        "UklGRnIAAABXRUJQVlA4IGYAAAAwBQCdASogACAAPjESiEKiISEYBgAgAwS0AE6ZQjgbwD8AP2q/1XPn7E9gMz8DW5CVYAD+7v+f/uoJmXwd/9C4/cxPptk0fnYGkjrHis17/Lim4xPPulTDV/7o24WNBwSA+0KgAAA=");
        BufferedImage drawn = PictureBytes.scaled(webp, 100, 100).orThrow();

        assertThat(PictureBytes.facts(webp).orThrow()).isEqualTo(new PictureBytes.Facts(32, 32, "image/webp"));
        assertNear(drawn.getRGB(8, 8), 200, 80, 40);
        assertNear(drawn.getRGB(24, 8), 40, 160, 90);
        assertNear(drawn.getRGB(8, 24), 50, 70, 180);
        assertNear(drawn.getRGB(24, 24), 240, 230, 210);
    }

    private static void assertNear(int argb, int red, int green, int blue) {
        assertThat(argb >> 16 & 0xFF).as("red").isCloseTo(red, within(6));
        assertThat(argb >> 8 & 0xFF).as("green").isCloseTo(green, within(6));
        assertThat(argb & 0xFF).as("blue").isCloseTo(blue, within(6));
    }

    @Test
    void neverEnlarges() throws IOException {
        assertThat(PictureBytes.scaled(png(40, 30), 300, 300).orThrow().getWidth())
                .isEqualTo(40);
    }

    @Test
    void refuses_whatIsNoPicture() {
        byte[] text = "symbol,code".getBytes(StandardCharsets.UTF_8);

        assertThat(code(PictureBytes.facts(text))).isEqualTo("not-a-picture");
    }

    @Test
    void refuses_aPictureThatClaimsToBeHuge_withoutUnpackingIt() throws IOException {
        byte[] lying = claiming(png(8, 8), 60_000, 60_000);

        assertThat(code(PictureBytes.facts(lying))).isEqualTo("picture-too-large");
        assertThat(code(PictureBytes.scaled(lying, 100, 100))).isEqualTo("picture-too-large");
    }

    @Test
    void refuses_aPictureThatBreaksOff() throws IOException {
        byte[] whole = png(200, 200);

        assertThat(code(PictureBytes.scaled(java.util.Arrays.copyOf(whole, 60), 100, 100)))
                .isEqualTo("not-a-picture");
    }

    private static String code(Result<?> result) {
        assertThat(result).isInstanceOf(Result.Refused.class);
        return ((Result.Refused<?>) result).refusal().code();
    }

    private static byte[] png(int width, int height) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), "png", out);
        return out.toByteArray();
    }

    /** PNG: width and height stand at byte 16, the checksum of that chunk at byte 29 (ISO/IEC 15948, 11.2.2). */
    private static byte[] claiming(byte[] png, int width, int height) {
        ByteBuffer bytes = ByteBuffer.wrap(png.clone());
        bytes.putInt(16, width).putInt(20, height);
        CRC32 crc = new CRC32();
        crc.update(bytes.array(), 12, 17);
        return bytes.putInt(29, (int) crc.getValue()).array();
    }
}
