package org.glintery.api.workshop;

import java.util.Optional;
import org.glintery.api.Preview;
import org.glintery.api.ledger.Balance;

/**
 * What a picture says of itself, read from its first bytes: nothing is unpacked. The size is the larger where a picture
 * tells several, such as a frame larger than its screen. Pure; any thread.
 */
@Preview(since = "1.0")
public record PictureFacts(PictureKind kind, int widthPx, int heightPx) {
    /** Larger pictures are refused wherever they come in: unpacked they would fill the memory. */
    public static final long MOST_PIXELS = 120_000_000L;

    public static final int LONGEST_SIDE_PX = 32_000;

    /** Empty when these are no picture's bytes, or end before they tell a size. */
    public static Optional<PictureFacts> of(byte[] bytes) {
        return PictureKind.of(bytes)
                .flatMap(kind -> new PictureHeader(bytes)
                        .size(kind)
                        .map(size -> new PictureFacts(kind, size.widthPx(), size.heightPx())));
    }

    public boolean isTooLarge() {
        return (long) widthPx * heightPx > MOST_PIXELS || Math.max(widthPx, heightPx) > LONGEST_SIDE_PX;
    }

    /** "60 000 x 60 000", with thin spaces. */
    public String sizeWords() {
        return Balance.grouped(widthPx) + " x " + Balance.grouped(heightPx);
    }
}
