package org.glintery.club;

import java.util.Optional;
import org.glintery.api.Json;
import org.glintery.club.signing.BoundedJson;

/**
 * Whether a text is a document of a club, by itself: rightly written, of this club, signed by its owner. Whether its owner is
 * a member, and whether a newer version is known, is for {@link RoomCopy} to say.
 *
 * @param document when it is, and {@code fault} when it is not
 */
record Judgement(Optional<SignedDocument> document, Optional<Fault> fault) {

    static Judgement of(String club, String text) {
        try {
            return BoundedJson.read(text) instanceof Json.Obj read ? of(club, text, read) : no(Fault.NOT_A_DOCUMENT);
        } catch (BoundedJson.GivenUpException e) {
            return no(
                    switch (e.reason()) {
                        case TOO_DEEP -> Fault.TOO_DEEP;
                        case TOO_MANY -> Fault.TOO_MANY;
                        case NOT_JSON -> Fault.UNFINISHED;
                    });
        }
    }

    private static Judgement of(String club, String text, Json.Obj read) {
        SignedDocument document;
        String written;
        try {
            document = document(read);
            written = document.text();
        } catch (IllegalArgumentException | ArithmeticException | java.util.NoSuchElementException e) {
            return no(Fault.NOT_A_DOCUMENT);
        }
        if (!document.club().equals(club)) {
            return no(Fault.OTHER_CLUB);
        }
        if (!document.isByItsOwner()) {
            return no(Fault.FOREIGN_SIGNED);
        }
        // one text alone is the document: blanks, fields in another order or fields besides are a change too
        return written.equals(text) && document.isTrulySigned()
                ? new Judgement(Optional.of(document), Optional.empty())
                : no(Fault.FORGED);
    }

    private static SignedDocument document(Json.Obj read) {
        String key = read.text("key").orElseThrow();
        String signature = read.text("signature").orElseThrow();
        if (!key.matches("[0-9a-f]{64}") || !signature.matches("[0-9a-f]{128}")) {
            throw new IllegalArgumentException("neither key nor signature");
        }
        return new SignedDocument(
                read.text("club").orElseThrow(),
                new DocKey(
                        read.text("owner").orElseThrow(),
                        read.text("kind").orElseThrow(),
                        read.text("name").orElseThrow()),
                read.number("version").orElseThrow().longValueExact(),
                read.get("removed").orElseThrow().equals(new Json.Flag(true)),
                read.get("body")
                        .filter(Json.Obj.class::isInstance)
                        .map(Json.Obj.class::cast)
                        .orElseThrow(),
                key,
                signature);
    }

    private static Judgement no(Fault fault) {
        return new Judgement(Optional.empty(), Optional.of(fault));
    }
}
