package org.glintery.club;

import java.util.HexFormat;
import org.glintery.api.Json;
import org.glintery.api.Preview;
import org.glintery.club.signing.CanonicalJson;
import org.glintery.club.signing.MemberKey;
import org.glintery.club.signing.PublicKeyBytes;

/**
 * One version of a document, signed by its owner. Its text is canonical (RFC 8785), the signature is over the same text
 * without it, and names the club, so that it counts in no other. Immutable; any thread.
 *
 * @param version from 1; a higher one takes the place of a lower one
 * @param removed whether it is the tombstone of the document; its body is empty then
 * @param key the owner's public key, and {@code signature}, as hexadecimal figures
 */
@Preview(since = "1.0")
public record SignedDocument(
        String club, DocKey id, long version, boolean removed, Json.Obj body, String key, String signature) {

    /** The largest number that every reader of JSON keeps exactly. */
    public static final long LAST_VERSION = (1L << 53) - 1;

    /** More bytes are not read. */
    public static final int MOST_BYTES = 64 * 1024;

    public SignedDocument {
        if (version < 1 || version > LAST_VERSION || removed && !body.fields().isEmpty()) {
            throw new IllegalArgumentException("not a version of a document");
        }
    }

    static SignedDocument signed(String club, DocKey id, long version, boolean removed, Json.Obj body, MemberKey key) {
        String publicKey = key.publicKey().hex();
        byte[] message = CanonicalJson.bytes(unsigned(club, id, version, removed, body, publicKey));
        String signature = HexFormat.of().formatHex(key.sign(message));
        return new SignedDocument(club, id, version, removed, body, publicKey, signature);
    }

    /** The text that lies in a room. */
    public String text() {
        return CanonicalJson.text(
                unsigned(club, id, version, removed, body, key).with("signature", new Json.Text(signature)));
    }

    /** Whether the key is the owner's. */
    boolean isByItsOwner() {
        return new PublicKeyBytes(key).memberId().equals(id.owner());
    }

    boolean isTrulySigned() {
        byte[] message = CanonicalJson.bytes(unsigned(club, id, version, removed, body, key));
        return new PublicKeyBytes(key).verifies(message, HexFormat.of().parseHex(signature));
    }

    /** Two signed versions with one number: everybody takes the same one, whichever came first. */
    boolean takesThePlaceOf(SignedDocument other) {
        return version != other.version ? version > other.version : signature.compareTo(other.signature) > 0;
    }

    private static Json.Obj unsigned(String club, DocKey id, long version, boolean removed, Json.Obj body, String key) {
        return Json.EMPTY
                .with("club", new Json.Text(club))
                .with("owner", new Json.Text(id.owner()))
                .with("kind", new Json.Text(id.kind()))
                .with("name", new Json.Text(id.name()))
                .with("version", Json.Num.of(version))
                .with("removed", new Json.Flag(removed))
                .with("body", body)
                .with("key", new Json.Text(key));
    }
}
