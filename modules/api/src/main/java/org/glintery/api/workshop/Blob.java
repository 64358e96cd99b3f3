package org.glintery.api.workshop;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.glintery.api.GlinteryException;
import org.glintery.api.Stable;

/**
 * Bytes by their content hash: blobs are equal when their hashes and media types are. The array is not copied: whoever makes a
 * blob leaves it alone from then on.
 *
 * @param hash SHA-256 in lower-case hexadecimal
 */
@Stable
public record Blob(String hash, String mediaType, byte[] bytes) {

    /** Larger ones are refused. */
    public static final int MOST_BYTES = 64 << 20;

    /** @throws IllegalArgumentException when the hash is not that of the bytes */
    public Blob {
        if (!hash(bytes).equals(hash)) {
            throw new IllegalArgumentException("the hash of other bytes: " + hash);
        }
    }

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

    @Override
    public boolean equals(Object other) {
        return other instanceof Blob blob && hash.equals(blob.hash) && mediaType.equals(blob.mediaType);
    }

    @Override
    public int hashCode() {
        return hash.hashCode();
    }

    @Override
    public String toString() {
        return mediaType + " " + hash;
    }
}
