package org.glintery.club.signing;

import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.SecureRandom;
import java.security.Signature;
import java.security.interfaces.EdECPrivateKey;
import java.security.spec.EdECPrivateKeySpec;
import java.security.spec.NamedParameterSpec;
import org.glintery.api.GlinteryException;

/** The pair of keys of one member: Ed25519, RFC 8032. Never written by {@code toString}. Immutable; any thread. */
public final class MemberKey {
    /** The bytes from which both keys follow. */
    public static final int SEED_BYTES = 32;

    private final byte[] seed;
    private final PublicKeyBytes publicKey;

    private MemberKey(byte[] seed, PublicKeyBytes publicKey) {
        this.seed = seed;
        this.publicKey = publicKey;
    }

    public static MemberKey made(SecureRandom random) {
        byte[] seed = new byte[SEED_BYTES];
        random.nextBytes(seed);
        return ofSeed(seed);
    }

    /** Both keys as they follow from the seed. */
    public static MemberKey ofSeed(byte[] seed) {
        if (seed.length != SEED_BYTES) {
            throw new IllegalArgumentException("a seed has " + SEED_BYTES + " bytes");
        }
        try {
            // the JDK derives the public key nowhere else than while it makes a pair
            KeyPairGenerator pairs = KeyPairGenerator.getInstance("Ed25519");
            pairs.initialize(NamedParameterSpec.ED25519, new Fixed(seed));
            KeyPair pair = pairs.generateKeyPair();
            byte[] used = ((EdECPrivateKey) pair.getPrivate()).getBytes().orElseThrow();
            if (!java.util.Arrays.equals(used, seed)) {
                throw new GlinteryException("this Java makes its keys in another way");
            }
            return new MemberKey(seed.clone(), PublicKeyBytes.of(pair.getPublic()));
        } catch (GeneralSecurityException e) {
            throw new GlinteryException("no Ed25519 in this Java", e);
        }
    }

    public PublicKeyBytes publicKey() {
        return publicKey;
    }

    /** For the key store and the recovery sheet alone. */
    public byte[] seed() {
        return seed.clone();
    }

    public byte[] sign(byte[] message) {
        try {
            Signature signing = Signature.getInstance("Ed25519");
            signing.initSign(KeyFactory.getInstance("Ed25519")
                    .generatePrivate(new EdECPrivateKeySpec(NamedParameterSpec.ED25519, seed)));
            signing.update(message);
            return signing.sign();
        } catch (GeneralSecurityException e) {
            throw new GlinteryException("no Ed25519 in this Java", e);
        }
    }

    /** Hands out the seed instead of chance. */
    private static final class Fixed extends SecureRandom {
        private static final long serialVersionUID = 1L;
        private final byte[] seed;

        Fixed(byte[] seed) {
            this.seed = seed.clone();
        }

        @Override
        public void nextBytes(byte[] bytes) {
            System.arraycopy(seed, 0, bytes, 0, bytes.length);
        }
    }
}
