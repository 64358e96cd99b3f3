package org.glintery.exchange.picture;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Which way up a camera held: the one thing of its data that the picture needs. Exif 2.32, tag 0x0112, values 1 to 8. */
final class ExifOrientation {
    private static final int TAG = 0x0112;
    private static final int SHORT = 3;
    private static final int ENTRY_BYTES = 12;

    private ExifOrientation() {}

    /**
     * The value where it says that the picture is turned; empty otherwise, also for data that can't be made out.
     *
     * @param from where the TIFF header begins
     */
    static Optional<Integer> in(byte[] bytes, int from, int to) {
        if (to - from < 8) {
            return Optional.empty();
        }
        var tiff = ByteBuffer.wrap(bytes, from, to - from).slice();
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = tiff.getInt(4);
        if (directory < 8 || directory > tiff.limit() - 2) {
            return Optional.empty();
        }
        int entries = tiff.getShort(directory) & 0xFFFF;
        for (int i = 0; i < entries; i++) {
            int entry = directory + 2 + i * ENTRY_BYTES;
            if (entry + ENTRY_BYTES > tiff.limit()) {
                return Optional.empty();
            }
            if ((tiff.getShort(entry) & 0xFFFF) == TAG && tiff.getShort(entry + 2) == SHORT) {
                int value = tiff.getShort(entry + 8);
                return value >= 2 && value <= 8 ? Optional.of(value) : Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** A whole APP1 segment that says this and nothing else. */
    static byte[] segment(int value) {
        var segment = ByteBuffer.allocate(36);
        segment.putShort((short) 0xFFE1).putShort((short) 34);
        segment.put("Exif\0\0".getBytes(StandardCharsets.ISO_8859_1));
        segment.put("MM".getBytes(StandardCharsets.ISO_8859_1))
                .putShort((short) 42)
                .putInt(8);
        segment.putShort((short) 1);
        segment.putShort((short) TAG)
                .putShort((short) SHORT)
                .putInt(1)
                .putShort((short) value)
                .putShort((short) 0);
        return segment.putInt(0).array();
    }
}
