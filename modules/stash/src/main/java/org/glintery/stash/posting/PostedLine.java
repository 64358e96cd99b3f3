package org.glintery.stash.posting;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;
import org.glintery.api.PlainText;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Amount.Basis;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.time.About;
import org.openide.util.NbBundle.Messages;

/**
 * One movement as a script writes it: {@code id}, {@code drill}, {@code from}, {@code to}, {@code count} and, where
 * wanted, {@code uncertainty}, {@code basis}, {@code lot}, {@code reason} and {@code happenedOn}. Any other field is refused:
 * it may be one of these misspelled, whose value would be lost. Refusals tell numbers as JSON writes them, for whoever puts the line right.
 *
 * @param from as written, such as {@code bag:b1}
 */
@Messages({
    "# {0} - field",
    "# {1} - the fields there are",
    "PostedLine.noField=A movement has no field ''{0}''. Its fields are {1}.",
    "# {0} - field",
    "# {1} - the fields there are",
    "PostedLine.noFieldOfDrill=The drill of a movement has no field ''{0}''. Its fields are {1}."
})
record PostedLine(
        UUID id,
        Drill drill,
        String from,
        String to,
        Amount amount,
        Optional<String> lot,
        String reason,
        Optional<About> happenedOn) {

    private static final List<String> FIELDS =
            List.of("id", "drill", "from", "to", "count", "uncertainty", "basis", "lot", "reason", "happenedOn");
    private static final List<String> DRILL_FIELDS =
            List.of("shape", "sizeMm", "body", "coating", "outline", "card", "code");
    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_REASON = 2_000;
    private static final long MOST_MM = 1_000;

    /** The id as it is written, for answering a line that can't be read. */
    static Optional<String> idIn(Json json) {
        return json instanceof Json.Obj obj ? obj.text("id") : Optional.empty();
    }

    /** @throws MalformedException with a plain sentence that names what is wrong */
    @Messages({
        "PostedLine.noObject=A movement is an object with id, drill, from, to and count.",
        "# {0} - what is wrong",
        "PostedLine.impossible=The movement can''t be as it is written: {0}."
    })
    static PostedLine read(Json json) {
        if (!(json instanceof Json.Obj obj)) {
            throw new MalformedException(Bundle.PostedLine_noObject());
        }
        try {
            return parts(obj);
        } catch (IllegalArgumentException e) {
            throw new MalformedException(Bundle.PostedLine_impossible(e.getMessage()), e);
        }
    }

    private static PostedLine parts(Json.Obj obj) {
        other(obj, FIELDS).ifPresent(field -> {
            throw new MalformedException(Bundle.PostedLine_noField(field, String.join(", ", FIELDS)));
        });
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

    private static Optional<String> other(Json.Obj obj, List<String> fields) {
        return obj.fields().keySet().stream()
                .filter(name -> !fields.contains(name))
                .findFirst()
                .map(PlainText::line);
    }

    @Messages({"# {0} - what is written", "PostedLine.noId=The id ''{0}'' is not a UUID."})
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
        throw new MalformedException(Bundle.PostedLine_noId(written));
    }

    @Messages("PostedLine.noDrill='drill' is missing or not an object.")
    private static Drill drill(Json.Obj obj) {
        if (!(obj.get("drill").orElse(Json.NULL) instanceof Json.Obj drill)) {
            throw new MalformedException(Bundle.PostedLine_noDrill());
        }
        other(drill, DRILL_FIELDS).ifPresent(field -> {
            throw new MalformedException(Bundle.PostedLine_noFieldOfDrill(field, String.join(", ", DRILL_FIELDS)));
        });
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

    @Messages({
        "# {0} - most",
        "PostedLine.size=''sizeMm'' must be from 0.01 to {0}.",
        "PostedLine.hundredths='sizeMm' must be in whole hundredths of a millimetre."
    })
    private static int size(Json.Obj drill) {
        BigDecimal mm = number(drill, "sizeMm");
        if (mm.compareTo(new BigDecimal("0.01")) < 0 || mm.compareTo(BigDecimal.valueOf(MOST_MM)) > 0) {
            throw new MalformedException(Bundle.PostedLine_size(String.valueOf(MOST_MM)));
        }
        try {
            return mm.movePointRight(2).intValueExact();
        } catch (ArithmeticException e) {
            throw new MalformedException(Bundle.PostedLine_hundredths(), e);
        }
    }

    @Messages({"# {0} - field", "PostedLine.ofUnknown=An amount that is not known has no ''{0}''."})
    private static Amount amount(Json.Obj obj) {
        Basis basis =
                word(obj, "basis", Basis.values(), obj.get("uncertainty").isPresent() ? Basis.ROUGH : Basis.COUNTED);
        if (basis == Basis.UNKNOWN) {
            for (String field : List.of("count", "uncertainty")) {
                if (obj.get(field).isPresent()) {
                    throw new MalformedException(Bundle.PostedLine_ofUnknown(field));
                }
            }
            return Amount.unknown();
        }
        long count = whole(obj, "count", 1);
        long uncertainty = obj.get("uncertainty").isPresent() ? whole(obj, "uncertainty", 0) : 0;
        return new Amount(basis, Optional.of(count), uncertainty);
    }

    @Messages({
        "# {0} - field",
        "# {1} - least",
        "# {2} - most",
        "PostedLine.range=''{0}'' must be from {1} to {2}.",
        "# {0} - field",
        "PostedLine.whole=''{0}'' must be a whole number."
    })
    private static long whole(Json.Obj obj, String name, long least) {
        BigDecimal number = number(obj, name);
        if (number.compareTo(BigDecimal.valueOf(least)) < 0 || number.compareTo(BigDecimal.valueOf(Amount.MOST)) > 0) {
            throw new MalformedException(
                    Bundle.PostedLine_range(name, String.valueOf(least), String.valueOf(Amount.MOST)));
        }
        try {
            return number.longValueExact();
        } catch (ArithmeticException e) {
            throw new MalformedException(Bundle.PostedLine_whole(name), e);
        }
    }

    @Messages({"# {0} - field", "PostedLine.noNumber=''{0}'' is missing or not a number."})
    private static BigDecimal number(Json.Obj obj, String name) {
        return obj.number(name).orElseThrow(() -> new MalformedException(Bundle.PostedLine_noNumber(name)));
    }

    @Messages({
        "# {0} - what is written",
        "PostedLine.noDate=''happenedOn'' must be a date such as 2025-03-31 (EDTF), not ''{0}''."
    })
    private static Optional<About> happenedOn(Json.Obj obj) {
        return optionalText(obj, "happenedOn", LONGEST_NAME)
                .map(written -> About.edtf(written)
                        .orElseThrow(() -> new MalformedException(Bundle.PostedLine_noDate(written))));
    }

    @Messages({"# {0} - field", "PostedLine.missing=''{0}'' is missing or empty."})
    private static String text(Json.Obj obj, String name) {
        return optionalText(obj, name, LONGEST_NAME)
                .filter(text -> !text.isBlank())
                .orElseThrow(() -> new MalformedException(Bundle.PostedLine_missing(name)));
    }

    @Messages({
        "# {0} - field",
        "PostedLine.noText=''{0}'' must be text.",
        "# {0} - field",
        "# {1} - most characters",
        "PostedLine.tooLong=''{0}'' may have at most {1} characters."
    })
    private static Optional<String> optionalText(Json.Obj obj, String name, int longest) {
        Json value = obj.get(name).orElse(Json.NULL);
        if (value instanceof Json.Null) {
            return Optional.empty();
        }
        if (!(value instanceof Json.Text text)) {
            throw new MalformedException(Bundle.PostedLine_noText(name));
        }
        if (text.value().length() > longest) {
            throw new MalformedException(Bundle.PostedLine_tooLong(name, Balance.grouped(longest)));
        }
        return Optional.of(text.value());
    }

    @Messages({"# {0} - field", "# {1} - words", "PostedLine.word=''{0}'' must be one of {1}."})
    private static <E extends Enum<E>> E word(Json.Obj obj, String name, E[] words, E otherwise) {
        Optional<String> written = optionalText(obj, name, LONGEST_NAME);
        if (written.isEmpty() && otherwise != null) {
            return otherwise;
        }
        return written.flatMap(text -> Arrays.stream(words)
                        .filter(word -> written(word).equals(text.strip().toLowerCase(Locale.ROOT)))
                        .findFirst())
                .orElseThrow(() -> new MalformedException(Bundle.PostedLine_word(
                        name, Arrays.stream(words).map(PostedLine::written).collect(Collectors.joining(", ")))));
    }

    private static String written(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
