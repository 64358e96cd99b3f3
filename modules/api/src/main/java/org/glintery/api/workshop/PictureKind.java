package org.glintery.api.workshop;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import org.glintery.api.Preview;

/** The kinds of picture that are known, by how their bytes begin. */
@Preview(since = "1.0")
public enum PictureKind {
    PNG("image/png", "png"),
    JPEG("image/jpeg", "jpg"),
    GIF("image/gif", "gif"),
    WEBP("image/webp", "webp"),
    BMP("image/bmp", "bmp"),
    TIFF("image/tiff", "tif");

    private final String mediaType;
    private final String extension;

    PictureKind(String mediaType, String extension) {
        this.mediaType = mediaType;
        this.extension = extension;
    }

    public String mediaType() {
        return mediaType;
    }

    /** Empty when these are no picture's bytes. */
    public static Optional<PictureKind> of(byte[] bytes) {
        String start = new String(bytes, 0, Math.min(bytes.length, 12), StandardCharsets.ISO_8859_1);
        if (start.startsWith("\u0089PNG\r\n\u001a\n")) {
            return Optional.of(PNG);
        }
        if (start.startsWith("\u00ff\u00d8\u00ff")) {
            return Optional.of(JPEG);
        }
        if (start.startsWith("GIF87a") || start.startsWith("GIF89a")) {
            return Optional.of(GIF);
        }
        if (start.startsWith("RIFF") && start.endsWith("WEBP")) {
            return Optional.of(WEBP);
        }
        if (start.startsWith("II*\0") || start.startsWith("MM\0*")) {
            return Optional.of(TIFF);
        }
        return start.startsWith("BM") && start.length() == 12 ? Optional.of(BMP) : Optional.empty();
    }

    /** The ending of a file of this media type, without a point; {@code bin} for others. */
    public static String extensionOf(String mediaType) {
        return Arrays.stream(values())
                .filter(kind -> kind.mediaType.equals(mediaType))
                .map(kind -> kind.extension)
                .findFirst()
                .orElse("bin");
    }
}
