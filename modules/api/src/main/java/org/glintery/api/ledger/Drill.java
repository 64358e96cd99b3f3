package org.glintery.api.ledger;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;

/**
 * A kind of drill. The colour is not part of it: it belongs to the card's entry and may be unknown.
 *
 * @param sizeHundredths the side or diameter in whole hundredths of a millimetre: 280 is 2.8 mm
 * @param outline for special shapes, what they look like; empty otherwise
 * @param card the short name of the colour card, such as {@code own}
 * @param code the card's code, or an own name; opaque text
 */
@Stable
public record Drill(
        Shape shape,
        int sizeHundredths,
        Body body,
        Coating coating,
        Optional<String> outline,
        String card,
        String code) {

    public Drill {
        Objects.requireNonNull(shape);
        Objects.requireNonNull(body);
        Objects.requireNonNull(coating);
        outline = outline == null ? Optional.empty() : PlainText.line(outline);
        card = PlainText.line(card);
        code = PlainText.line(code);
        if (sizeHundredths <= 0 || sizeHundredths > 100_000) {
            throw new IllegalArgumentException("size out of range: " + sizeHundredths);
        }
        if (card.isBlank() || code.isBlank()) {
            throw new IllegalArgumentException("a drill needs a card and a code");
        }
    }

    public static Drill of(Shape shape, int sizeHundredths, String card, String code) {
        return new Drill(shape, sizeHundredths, Body.RESIN, Coating.NONE, Optional.empty(), card, code);
    }

    /** Common practice, no published source: squares are about 2.5 mm, rounds about 2.8 mm. */
    public static int usualSizeHundredths(Shape shape) {
        return shape == Shape.ROUND ? 280 : 250;
    }

    public double sizeMm() {
        return sizeHundredths / 100.0;
    }

    /**
     * The drill's identity as text, from which ids are made: six components and, for a special shape, its outline, parted
     * by bars; a bar or a percent sign within one is percent-encoded. It never changes, whatever becomes of this class.
     */
    public String key() {
        String key = String.join(
                "|",
                lower(shape),
                String.valueOf(sizeHundredths),
                lower(body),
                lower(coating),
                encoded(card),
                encoded(code));
        return key + outline.map(o -> "|" + encoded(o)).orElse("");
    }

    private static String encoded(String text) {
        return text.replace("%", "%25").replace("|", "%7C");
    }

    /** Whether this kind can stand in for another: same shape, size, outline, body and coating. */
    public boolean sameKindAs(Drill other) {
        return shape == other.shape
                && sizeHundredths == other.sizeHundredths
                && body == other.body
                && coating == other.coating
                && outline.equals(other.outline);
    }

    /** "own T1, round 2.8 mm"; body, coating and outline only where they are not the usual ones. */
    public String words() {
        return card + " " + code + ", " + kindWords();
    }

    /** What kind it is, without its colour: "round 2.8 mm, metallic". */
    public String kindWords() {
        String kind = lower(shape) + " "
                + BigDecimal.valueOf(sizeHundredths, 2).stripTrailingZeros().toPlainString() + " mm";
        kind += body == Body.RESIN ? "" : ", " + lower(body);
        kind += coating == Coating.NONE ? "" : ", " + (coating == Coating.AB ? "AB" : lower(coating));
        return kind + outline.map(o -> ", " + o).orElse("");
    }

    private static String lower(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
