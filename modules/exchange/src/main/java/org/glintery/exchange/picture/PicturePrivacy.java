package org.glintery.exchange.picture;

import java.util.Optional;
import org.glintery.api.workshop.PictureKind;

/** Takes out of a picture what it tells of the place, the time and the camera; the picture itself stays as it is. Pure. */
public final class PicturePrivacy {
    private PicturePrivacy() {}

    /**
     * The same picture without these data. Empty when it is of a kind, or damaged in a way, that leaves no certainty.
     */
    public static Optional<byte[]> without(byte[] picture) {
        Optional<PictureKind> kind = PictureKind.of(picture);
        if (kind.isEmpty()) {
            return Optional.empty();
        }
        return switch (kind.get()) {
            case JPEG -> new JpegSegments(picture).picked();
            case PNG -> PngChunks.picked(picture);
            case GIF, WEBP, BMP, TIFF -> Optional.empty();
        };
    }
}
