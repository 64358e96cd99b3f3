package org.glintery.planning;

import org.glintery.api.Preview;

/**
 * A length in inches as the trade writes it: a whole number and a fraction in lowest terms. For display; sums stay in
 * micrometres.
 *
 * @param whole inches below the fraction
 * @param numerator 0 where there is no fraction
 * @param denominator a power of two
 * @param exact whether the fraction is the length itself and not the nearest to it
 */
@Preview(since = "1.0")
public record Inches(long whole, int numerator, int denominator, boolean exact) {

    /** By definition, 25.4 mm (international yard and pound agreement, 1959). */
    public static final long UM_AN_INCH = 25_400;

    /**
     * The nearest fraction; half way goes up.
     *
     * @param lengthUm not negative
     * @param finest 2, 4, 8, 16, 32 or 64 parts of an inch
     * @throws IllegalArgumentException for a negative length or another division
     */
    public static Inches nearest(long lengthUm, int finest) {
        if (lengthUm < 0 || finest < 2 || finest > 64 || Integer.bitCount(finest) != 1) {
            throw new IllegalArgumentException("no such fraction: " + lengthUm + " um in 1/" + finest);
        }
        long scaled = Math.multiplyExact(lengthUm, (long) finest);
        long parts = Math.floorDiv(2 * scaled + UM_AN_INCH, 2 * UM_AN_INCH);
        int numerator = (int) (parts % finest);
        int shift = numerator == 0 ? 0 : Integer.numberOfTrailingZeros(numerator);
        return new Inches(
                parts / finest, numerator >> shift, numerator == 0 ? 1 : finest >> shift, parts * UM_AN_INCH == scaled);
    }

    /** "19 5/8", "3/16", "20". */
    public String text() {
        if (numerator == 0) {
            return Long.toString(whole);
        }
        String fraction = numerator + "/" + denominator;
        return whole == 0 ? fraction : whole + " " + fraction;
    }
}
