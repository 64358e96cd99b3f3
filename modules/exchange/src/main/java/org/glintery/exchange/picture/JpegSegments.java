package org.glintery.exchange.picture;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * The segments of a JPEG that make the picture. Of the application segments stay JFIF, colour profiles and the colour
 * transform; of the camera data stays which way up. Comments and what follows the picture's end are left out. ITU-T T.81,
 * annex B; Exif 2.32, 4.5.2. Used once.
 */
final class JpegSegments {
    private static final int START = 0xD8;
    private static final int END = 0xD9;
    private static final int SCAN = 0xDA;
    private static final int APP0 = 0xE0;
    private static final int APP15 = 0xEF;
    private static final int COMMENT = 0xFE;

    private final byte[] jpeg;
    private final ByteArrayOutputStream out;
    private int at = 2;

    JpegSegments(byte[] jpeg) {
        this.jpeg = jpeg;
        this.out = new ByteArrayOutputStream(jpeg.length);
    }

    /** Empty when the segments do not add up to a whole picture. */
    Optional<byte[]> picked() {
        out.write(0xFF);
        out.write(START);
        while (at + 1 < jpeg.length && unsigned(at) == 0xFF) {
            int marker = unsigned(at + 1);
            if (marker == 0xFF) {
                at++;
            } else if (marker == END) {
                out.write(jpeg, at, 2);
                return Optional.of(out.toByteArray());
            } else if (!takeSegment(marker)) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private boolean takeSegment(int marker) {
        if (at + 3 >= jpeg.length) {
            return false;
        }
        int end = at + 2 + (unsigned(at + 2) << 8 | unsigned(at + 3));
        if (end < at + 4 || end > jpeg.length) {
            return false;
        }
        Optional<Integer> turned = begins("Exif\0\0") ? ExifOrientation.in(jpeg, at + 10, end) : Optional.empty();
        if (turned.isPresent()) {
            out.writeBytes(ExifOrientation.segment(turned.get()));
        } else if (isOfThePicture(marker)) {
            out.write(jpeg, at, end - at);
        }
        at = end;
        if (marker == SCAN) {
            takeScan();
        }
        return true;
    }

    private boolean isOfThePicture(int marker) {
        if (marker == COMMENT) {
            return false;
        }
        boolean application = marker >= APP0 && marker <= APP15;
        return !application || begins("JFIF\0") || begins("ICC_PROFILE\0") || begins("Adobe");
    }

    /** Whether the segment's content begins with a name. */
    private boolean begins(String name) {
        byte[] bytes = name.getBytes(StandardCharsets.ISO_8859_1);
        int from = at + 4;
        return from + bytes.length <= jpeg.length
                && Arrays.equals(jpeg, from, from + bytes.length, bytes, 0, bytes.length);
    }

    /** Copies the coded picture up to the next marker; 0xFF00 is no marker there, and restarts belong to it. */
    private void takeScan() {
        int from = at;
        while (at + 1 < jpeg.length && !(unsigned(at) == 0xFF && isMarker(unsigned(at + 1)))) {
            at++;
        }
        out.write(jpeg, from, at - from);
    }

    private static boolean isMarker(int second) {
        return second != 0 && second != 0xFF && (second < 0xD0 || second > 0xD7);
    }

    private int unsigned(int place) {
        return jpeg[place] & 0xFF;
    }
}
