package org.glintery.api.workshop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.glintery.api.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NewPictureTest {
    @TempDir
    Path temp;

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpeg", "gif", "bmp"})
    void givesThePictureWithItsBytes(String format) throws IOException {
        byte[] bytes = picture(format);
        Path file = Files.write(temp.resolve("Slip at dusk." + format), bytes);

        NewPicture read = NewPicture.read(file).orThrow();

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

    /** PNG: width and height stand at byte 16 (ISO/IEC 15948, 11.2.2). */
    @Test
    void refusesAPictureThatClaimsToBeHuge() throws IOException {
        byte[] lying = ByteBuffer.wrap(picture("png"))
                .putInt(16, 60_000)
                .putInt(20, 60_000)
                .array();
        refuses(Files.write(temp.resolve("d.png"), lying), "picture-too-large", "d.png: This picture says it is 60");
    }

    private static void refuses(Path file, String code, String text) {
        assertThat(NewPicture.read(file)).isInstanceOfSatisfying(Result.Refused.class, refused -> {
            assertThat(refused.refusal().code()).isEqualTo(code);
            assertThat(refused.refusal().text()).startsWith(text).contains("Nothing was changed");
        });
    }

    private static byte[] picture(String format) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), format, out);
        return out.toByteArray();
    }
}
