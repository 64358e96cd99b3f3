package org.glintery.exchange.picture;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;

/**
 * The chunks of a PNG that make the picture: the critical ones and those for colour, size and animation. Text, times and
 * camera data are left out, and so is what nobody knows. W3C, PNG specification, third edition, 2025, section 11.
 */
final class PngChunks {
    private static final int SIGNATURE_BYTES = 8;
    private static final int FRAME_BYTES = 12;
    private static final Set<String> OF_THE_PICTURE = Set.of(
            "IHDR", "PLTE", "IDAT", "IEND", "tRNS", "cHRM", "gAMA", "iCCP", "sBIT", "sRGB", "cICP", "mDCV", "cLLI",
            "bKGD", "hIST", "sPLT", "pHYs", "acTL", "fcTL", "fdAT");

    private PngChunks() {}

    /** Empty when the chunks do not add up to a whole picture. */
    static Optional<byte[]> picked(byte[] png) {
        var in = ByteBuffer.wrap(png);
        var out = new ByteArrayOutputStream(png.length);
        out.write(png, 0, SIGNATURE_BYTES);
        int at = SIGNATURE_BYTES;
        while (png.length - at >= FRAME_BYTES) {
            int length = in.getInt(at);
            if (length < 0 || length > png.length - at - FRAME_BYTES) {
                return Optional.empty();
            }
            String type = new String(png, at + 4, 4, StandardCharsets.ISO_8859_1);
            if (OF_THE_PICTURE.contains(type)) {
                out.write(png, at, length + FRAME_BYTES);
            }
            if (type.equals("IEND")) {
                return Optional.of(out.toByteArray());
            }
            at += length + FRAME_BYTES;
        }
        return Optional.empty();
    }
}
