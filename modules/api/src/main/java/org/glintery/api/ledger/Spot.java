package org.glintery.api.ledger;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.MalformedException;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;
import org.glintery.api.internal.Wording;

/**
 * Where drills can be. Inside the workshop: a bag, a pocket, a canvas. Outside: a boundary, which has no
 * balance of its own and may go below zero. The text form holds ids: {@code bag:ID},
 * {@code pocket:HOLDER/POCKET}, {@code canvas:PIECE}, {@code supplier}, {@code supplier:SHOP}.
 */
@Stable
public sealed interface Spot {

    /** The four ways in and out. */
    enum Edge {
        SUPPLIER,
        LOST,
        FOUND,
        SWAPPED
    }

    /** @param name the shop or member, when given */
    record Boundary(Edge edge, Optional<String> name) implements Spot {
        public Boundary {
            name = PlainText.line(name);
        }

        @Override
        public String toString() {
            String base = edge.name().toLowerCase(java.util.Locale.ROOT);
            return name.map(n -> base + ":" + encode(n)).orElse(base);
        }
    }

    record InBag(UUID bag) implements Spot {
        @Override
        public String toString() {
            return "bag:" + bag;
        }
    }

    record InPocket(UUID holder, UUID pocket) implements Spot {
        @Override
        public String toString() {
            return "pocket:" + holder + "/" + pocket;
        }
    }

    record OnCanvas(UUID piece) implements Spot {
        @Override
        public String toString() {
            return "canvas:" + piece;
        }
    }

    Spot SUPPLIER = new Boundary(Edge.SUPPLIER, Optional.empty());
    Spot LOST = new Boundary(Edge.LOST, Optional.empty());
    Spot FOUND = new Boundary(Edge.FOUND, Optional.empty());
    Spot SWAPPED = new Boundary(Edge.SWAPPED, Optional.empty());

    /** Whether drills here are at hand: in a bag or a pocket. */
    default boolean inTheHouse() {
        return this instanceof InBag || this instanceof InPocket;
    }

    default boolean isBoundary() {
        return this instanceof Boundary;
    }

    /** The inverse of {@code toString}. @throws MalformedException for anything else */
    static Spot parse(String text) {
        try {
            int colon = text.indexOf(':');
            String kind = colon < 0 ? text : text.substring(0, colon);
            String rest = colon < 0 ? "" : text.substring(colon + 1);
            switch (kind) {
                case "bag":
                    return new InBag(UUID.fromString(rest));
                case "canvas":
                    return new OnCanvas(UUID.fromString(rest));
                case "pocket":
                    int slash = rest.indexOf('/');
                    return new InPocket(
                            UUID.fromString(rest.substring(0, slash)), UUID.fromString(rest.substring(slash + 1)));
                default:
                    Edge edge = Edge.valueOf(kind.toUpperCase(java.util.Locale.ROOT));
                    return new Boundary(edge, colon < 0 ? Optional.empty() : Optional.of(decode(rest)));
            }
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            throw new MalformedException(Wording.of(Spot.class, "malformed", text), e);
        }
    }

    /** Percent-encodes what separates the parts of a spot: slash, colon and percent. */
    static String encode(String name) {
        return name.replace("%", "%25").replace("/", "%2F").replace(":", "%3A");
    }

    static String decode(String name) {
        return URLDecoder.decode(name.replace("+", "%2B"), StandardCharsets.UTF_8);
    }
}
