package org.glintery.records;

import java.io.ByteArrayOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;
import org.glintery.api.GlinteryException;

/**
 * A document's body as it is kept: one byte that says how, then compact JSON in UTF-8, deflated where that
 * is shorter. Legends repeat their field names on every line, so most shrink to a sixth.
 */
final class PackedBody {
    private static final byte PLAIN = 0;
    private static final byte DEFLATED = 1;
    private static final int WORTH_TRYING = 200;

    private PackedBody() {}

    static byte[] pack(byte[] plain) {
        if (plain.length >= WORTH_TRYING) {
            var deflater = new Deflater(Deflater.BEST_SPEED, true);
            try {
                deflater.setInput(plain);
                deflater.finish();
                byte[] packed = new byte[plain.length];
                packed[0] = DEFLATED;
                int length = deflater.deflate(packed, 1, packed.length - 1);
                if (deflater.finished()) {
                    return Arrays.copyOf(packed, length + 1);
                }
            } finally {
                deflater.end();
            }
        }
        byte[] kept = new byte[plain.length + 1];
        kept[0] = PLAIN;
        System.arraycopy(plain, 0, kept, 1, plain.length);
        return kept;
    }

    static byte[] unpack(byte[] packed) {
        if (packed[0] == PLAIN) {
            return Arrays.copyOfRange(packed, 1, packed.length);
        }
        var inflater = new Inflater(true);
        try {
            inflater.setInput(packed, 1, packed.length - 1);
            var plain = new ByteArrayOutputStream(packed.length * 4);
            byte[] part = new byte[8192];
            while (!inflater.finished()) {
                int length = inflater.inflate(part);
                if (length == 0 && inflater.needsInput()) {
                    throw new GlinteryException("a document ends too early");
                }
                plain.write(part, 0, length);
            }
            return plain.toByteArray();
        } catch (DataFormatException e) {
            throw new GlinteryException("a document is damaged", e);
        } finally {
            inflater.end();
        }
    }

    /** SHA-256 of the plain body. */
    static byte[] hash(byte[] packed) {
        return sha256().digest(unpack(packed));
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new GlinteryException("this Java has no SHA-256", e);
        }
    }
}
