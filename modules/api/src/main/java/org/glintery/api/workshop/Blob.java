package org.glintery.api.workshop;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.glintery.api.GlinteryException;
import org.glintery.api.Stable;

/** Bytes by their content hash. The array is not copied: whoever makes a blob leaves it alone from then on. */
@Stable
public record Blob(String hash, String mediaType, byte[] bytes) {

    /** Larger ones are refused. */
    public static final int MOST_BYTES = 64 << 20;

    public static Blob of(String mediaType, byte[] bytes) {
        return new Blob(hash(bytes), mediaType, bytes);
    }

    /** SHA-256 in lower-case hexadecimal. */
    public static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new GlinteryException("this Java has no SHA-256", e);
        }
    }
}
