package org.glintery.club.signing;

import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.MessageDigest;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.X509EncodedKeySpec;
import java.util.Arrays;
import java.util.HexFormat;
import org.glintery.api.GlinteryException;

/**
 * A member's public key as RFC 8032 writes it.
 *
 * @param hex its 32 bytes
 */
public record PublicKeyBytes(String hex) {
    /** What stands before the key in its X.509 form (RFC 8410). */
    private static final byte[] X509_HEAD = HexFormat.of().parseHex("302a300506032b6570032100");

    private static final int ID_BYTES = 16;

    public PublicKeyBytes {
        if (!hex.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException("a public key has 64 hexadecimal figures");
        }
    }

    static PublicKeyBytes of(PublicKey key) {
        byte[] x509 = key.getEncoded();
        return new PublicKeyBytes(HexFormat.of().formatHex(x509, X509_HEAD.length, x509.length));
    }

    /** The id of its member: the start of its SHA-256, so that nobody can choose another's. */
    public String memberId() {
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256").digest(HexFormat.of().parseHex(hex));
            return HexFormat.of().formatHex(digest, 0, ID_BYTES);
        } catch (GeneralSecurityException e) {
            throw new GlinteryException("no SHA-256 in this Java", e);
        }
    }

    /** Whether the signature is this key's; a key or a signature that is none is not. */
    public boolean verifies(byte[] message, byte[] signature) {
        try {
            byte[] key = HexFormat.of().parseHex(hex);
            byte[] x509 = Arrays.copyOf(X509_HEAD, X509_HEAD.length + key.length);
            System.arraycopy(key, 0, x509, X509_HEAD.length, key.length);
            Signature checking = Signature.getInstance("Ed25519");
            checking.initVerify(KeyFactory.getInstance("Ed25519").generatePublic(new X509EncodedKeySpec(x509)));
            checking.update(message);
            return checking.verify(signature);
        } catch (GeneralSecurityException e) {
            return false;
        }
    }
}
