package org.glintery.club.signing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.stream.Stream;

/** A double as ECMAScript writes it (ECMA-262, Number::toString), which RFC 8785 asks for. Pure; any thread. */
final class EcmaNumber {
    private static final int MOST_DIGITS = 17;
    /** Larger powers of ten, and smaller than the one below, are written with an exponent. */
    private static final int LAST_PLAIN_POWER = 21;

    private static final int FIRST_PLAIN_POWER = -6;

    private EcmaNumber() {}

    static String text(double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("not a number that JSON knows: " + value);
        }
        if (value == 0) {
            return "0";
        }
        return (value < 0 ? "-" : "") + layOut(shortest(Math.abs(value)));
    }

    /** The fewest digits that give the same double when read; of several such, the nearest. */
    private static BigDecimal shortest(double value) {
        BigDecimal exact = new BigDecimal(value);
        for (int digits = 1; digits < MOST_DIGITS; digits++) {
            int places = digits;
            var found = Stream.of(RoundingMode.HALF_EVEN, RoundingMode.DOWN, RoundingMode.UP)
                    .map(way -> exact.round(new MathContext(places, way)))
                    .filter(near -> near.doubleValue() == value)
                    .findFirst();
            if (found.isPresent()) {
                return found.get();
            }
        }
        return exact.round(new MathContext(MOST_DIGITS, RoundingMode.HALF_EVEN));
    }

    private static String layOut(BigDecimal decimal) {
        BigDecimal stripped = decimal.stripTrailingZeros();
        String digits = stripped.unscaledValue().toString();
        int point = digits.length() - stripped.scale();
        if (point > LAST_PLAIN_POWER || point <= FIRST_PLAIN_POWER) {
            int power = point - 1;
            String fraction = digits.length() == 1 ? "" : "." + digits.substring(1);
            return digits.charAt(0) + fraction + "e" + (power < 0 ? "" : "+") + power;
        }
        return stripped.toPlainString();
    }
}
