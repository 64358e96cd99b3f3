package org.glintery.api.workshop;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Optional;

/** Where each kind of picture tells its size. Looks at whatever bytes come; used once. */
final class PictureHeader {
    private static final int TIFF_MOST_TAGS = 4_096;

    private final ByteBuffer bytes;
    private int widthPx;
    private int heightPx;

    PictureHeader(byte[] bytes) {
        this.bytes = ByteBuffer.wrap(bytes);
    }

    /** In pixels; beyond what an int holds the largest int. */
    record Size(int widthPx, int heightPx) {}

    Optional<Size> size(PictureKind kind) {
        try {
            switch (kind) {
                case PNG -> png();
                case JPEG -> jpeg();
                case GIF -> gif();
                case BMP -> bmp();
                case WEBP -> webp();
                case TIFF -> tiff();
            }
        } catch (IndexOutOfBoundsException e) {
            // The bytes end before the size is told.
            return Optional.empty();
        }
        return widthPx > 0 && heightPx > 0 ? Optional.of(new Size(widthPx, heightPx)) : Optional.empty();
    }

    private void tell(long width, long height) {
        widthPx = (int) Math.max(widthPx, Math.min(Integer.MAX_VALUE, width));
        heightPx = (int) Math.max(heightPx, Math.min(Integer.MAX_VALUE, height));
    }

    private int u8(int at) {
        return bytes.get(at) & 0xFF;
    }

    private int u16(int at) {
        return bytes.getShort(at) & 0xFFFF;
    }

    private long u32(int at) {
        return bytes.getInt(at) & 0xFFFF_FFFFL;
    }

    /** The first chunk tells width and height; ISO/IEC 15948, 11.2.2. */
    private void png() {
        tell(u32(16), u32(20));
    }

    /** The start of frame tells height and width; ITU-T T.81, B.2.2. */
    private void jpeg() {
        int at = 2;
        while (true) {
            if (u8(at) != 0xFF) {
                at++;
                continue;
            }
            int marker = u8(at + 1);
            boolean isFrame = marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
            boolean standsAlone =
                    marker == 0xFF || marker == 0x00 || marker == 0x01 || marker >= 0xD0 && marker <= 0xD8;
            if (isFrame) {
                tell(u16(at + 7), u16(at + 5));
                return;
            }
            if (marker == 0xD9 || marker == 0xDA) {
                return;
            }
            at += standsAlone ? 1 : 2 + Math.max(2, u16(at + 2));
        }
    }

    /** The screen and the first image each tell their size; GIF89a, 18 and 20. */
    private void gif() {
        bytes.order(ByteOrder.LITTLE_ENDIAN);
        tell(u16(6), u16(8));
        int at = 13 + colours(u8(10));
        while (u8(at) == 0x21) {
            at += 2;
            for (int length = u8(at); length > 0; length = u8(at)) {
                at += 1 + length;
            }
            at++;
        }
        if (u8(at) == 0x2C) {
            tell((long) u16(at + 1) + u16(at + 5), (long) u16(at + 3) + u16(at + 7));
        }
    }

    private static int colours(int flags) {
        return (flags & 0x80) == 0 ? 0 : 3 << (flags & 7) + 1;
    }

    /** The second header tells width and height, of two bytes each in its oldest form, the height below zero from top down. */
    private void bmp() {
        bytes.order(ByteOrder.LITTLE_ENDIAN);
        if (u32(14) == 12) {
            tell(u16(18), u16(20));
        } else {
            tell(Math.abs((long) bytes.getInt(18)), Math.abs((long) bytes.getInt(22)));
        }
    }

    /** RFC 9649, 2.5 to 2.7: plain, without loss, extended. */
    private void webp() {
        bytes.order(ByteOrder.LITTLE_ENDIAN);
        switch (u8(15)) {
            case ' ' -> tell(u16(26) & 0x3FFF, u16(28) & 0x3FFF);
            case 'L' -> {
                long bits = u32(21);
                tell((bits & 0x3FFF) + 1, (bits >> 14 & 0x3FFF) + 1);
            }
            case 'X' -> tell((u32(24) & 0xFF_FFFF) + 1, (u32(27) & 0xFF_FFFF) + 1);
            default -> tell(0, 0);
        }
    }

    /** Tags 256 and 257 of the first directory tell width and height, 322 and 323 those of a tile; TIFF 6.0, 2 and 15. */
    private void tiff() {
        bytes.order(u8(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = (int) Math.min(Integer.MAX_VALUE - 2, u32(4));
        int tags = Math.min(TIFF_MOST_TAGS, u16(directory));
        for (int i = 0; i < tags; i++) {
            int at = directory + 2 + 12 * i;
            long value = u16(at + 2) == 3 ? u16(at + 8) : u32(at + 8);
            switch (u16(at)) {
                case 256, 322 -> tell(value, 0);
                case 257, 323 -> tell(0, value);
                default -> tell(0, 0);
            }
        }
    }
}
