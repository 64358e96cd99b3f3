package org.glintery.stash.posting;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Amount.Basis;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.time.About;

/**
 * One movement as a script writes it: {@code id}, {@code drill}, {@code from}, {@code to}, {@code count} and, where
 * wanted, {@code uncertainty}, {@code basis}, {@code lot}, {@code reason} and {@code happenedOn}.
 *
 * @param from as written, such as {@code bag:b1}
 */
record PostedLine(
        UUID id,
        Drill drill,
        String from,
        String to,
        Amount amount,
        Optional<String> lot,
        String reason,
        Optional<About> happenedOn) {

    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_REASON = 2_000;

    /** The id as it is written, for answering a line that can't be read. */
    static Optional<String> idIn(Json json) {
        return json instanceof Json.Obj obj ? obj.text("id") : Optional.empty();
    }

    /** @throws MalformedException with a plain sentence that names what is wrong */
    static PostedLine read(Json json) {
        if (!(json instanceof Json.Obj obj)) {
            throw new MalformedException("A movement is an object with id, drill, from, to and count.");
        }
        try {
            return parts(obj);
        } catch (IllegalArgumentException e) {
            throw new MalformedException("The movement can't be as it is written: " + e.getMessage() + ".", e);
        }
    }

    private static PostedLine parts(Json.Obj obj) {
        return new PostedLine(
                id(obj),
                drill(obj),
                text(obj, "from"),
                text(obj, "to"),
                amount(obj),
                optionalText(obj, "lot", LONGEST_NAME),
                optionalText(obj, "reason", LONGEST_REASON).orElse(""),
                happenedOn(obj));
    }

    private static UUID id(Json.Obj obj) {
        String written = text(obj, "id");
        try {
            UUID id = UUID.fromString(written);
            if (id.toString().equalsIgnoreCase(written)) {
                return id;
            }
        } catch (IllegalArgumentException e) {
            // told below, as for a UUID that Java would read leniently
        }
        throw new MalformedException("The id '" + written + "' is not a UUID.");
    }

    private static Drill drill(Json.Obj obj) {
        if (!(obj.get("drill").orElse(Json.NULL) instanceof Json.Obj drill)) {
            throw new MalformedException("'drill' is missing or not an object.");
        }
        Shape shape = word(drill, "shape", Shape.values(), null);
        int size = drill.get("sizeMm").isPresent() ? size(drill) : Drill.usualSizeHundredths(shape);
        return new Drill(
                shape,
                size,
                word(drill, "body", Body.values(), Body.RESIN),
                word(drill, "coating", Coating.values(), Coating.NONE),
                optionalText(drill, "outline", LONGEST_NAME),
                optionalText(drill, "card", LONGEST_NAME).orElse(ColourCard.OWN),
                text(drill, "code"));
    }

    private static int size(Json.Obj drill) {
        BigDecimal mm = number(drill, "sizeMm");
        if (mm.compareTo(new BigDecimal("0.01")) < 0 || mm.compareTo(BigDecimal.valueOf(1_000)) > 0) {
            throw new MalformedException("'sizeMm' must be from 0.01 to 1000.");
        }
        try {
            return mm.movePointRight(2).intValueExact();
        } catch (ArithmeticException e) {
            throw new MalformedException("'sizeMm' must be in whole hundredths of a millimetre.", e);
        }
    }

    private static Amount amount(Json.Obj obj) {
        Basis basis =
                word(obj, "basis", Basis.values(), obj.get("uncertainty").isPresent() ? Basis.ROUGH : Basis.COUNTED);
        if (basis == Basis.UNKNOWN) {
            if (obj.get("count").isPresent()) {
                throw new MalformedException("An amount that is not known has no 'count'.");
            }
            return Amount.unknown();
        }
        long count = whole(obj, "count", 1);
        long uncertainty = obj.get("uncertainty").isPresent() ? whole(obj, "uncertainty", 0) : 0;
        return new Amount(basis, Optional.of(count), uncertainty);
    }

    private static long whole(Json.Obj obj, String name, long least) {
        BigDecimal number = number(obj, name);
        if (number.compareTo(BigDecimal.valueOf(least)) < 0 || number.compareTo(BigDecimal.valueOf(Amount.MOST)) > 0) {
            throw new MalformedException("'" + name + "' must be from " + least + " to " + Amount.MOST + ".");
        }
        try {
            return number.longValueExact();
        } catch (ArithmeticException e) {
            throw new MalformedException("'" + name + "' must be a whole number.", e);
        }
    }

    private static BigDecimal number(Json.Obj obj, String name) {
        return obj.number(name).orElseThrow(() -> new MalformedException("'" + name + "' is missing or not a number."));
    }

    private static Optional<About> happenedOn(Json.Obj obj) {
        return optionalText(obj, "happenedOn", LONGEST_NAME)
                .map(written -> About.edtf(written)
                        .orElseThrow(() -> new MalformedException(
                                "'happenedOn' must be a date such as 2025-03-31 (EDTF), not '" + written + "'.")));
    }

    private static String text(Json.Obj obj, String name) {
        return optionalText(obj, name, LONGEST_NAME)
                .filter(text -> !text.isBlank())
                .orElseThrow(() -> new MalformedException("'" + name + "' is missing or empty."));
    }

    private static Optional<String> optionalText(Json.Obj obj, String name, int longest) {
        Json value = obj.get(name).orElse(Json.NULL);
        if (value instanceof Json.Null) {
            return Optional.empty();
        }
        if (!(value instanceof Json.Text text)) {
            throw new MalformedException("'" + name + "' must be text.");
        }
        if (text.value().length() > longest) {
            throw new MalformedException("'" + name + "' may have at most " + longest + " characters.");
        }
        return Optional.of(text.value());
    }

    private static <E extends Enum<E>> E word(Json.Obj obj, String name, E[] words, E otherwise) {
        Optional<String> written = optionalText(obj, name, LONGEST_NAME);
        if (written.isEmpty() && otherwise != null) {
            return otherwise;
        }
        return written.flatMap(text -> Arrays.stream(words)
                        .filter(word -> written(word).equals(text.strip().toLowerCase(Locale.ROOT)))
                        .findFirst())
                .orElseThrow(() -> new MalformedException("'" + name + "' must be one of "
                        + Arrays.stream(words).map(PostedLine::written).collect(Collectors.joining(", ")) + "."));
    }

    private static String written(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
