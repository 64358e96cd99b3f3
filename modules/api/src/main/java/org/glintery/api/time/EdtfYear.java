package org.glintery.api.time;

import java.math.BigInteger;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A year of more than four digits, one written with an exponent, or one of which only some digits are significant.
 *
 * @param significant how many digits are; empty for all
 */
record EdtfYear(String text, long year, OptionalInt significant) implements Edtf {

    private static final Pattern FORM = Pattern.compile(
            "(?<long>Y)?(?<sign>-?)(?<digits>\\d{1,18})(?:E(?<zeros>\\d{1,2}))?(?:S(?<significant>\\d{1,2}))?");
    /** Beyond this the arithmetic would not hold; the world is younger. */
    private static final BigInteger FURTHEST = BigInteger.TEN.pow(18);

    /** Empty when the text is no such year; a plain year of four digits is none. */
    static Optional<EdtfYear> parse(String text) {
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            return Optional.empty();
        }
        boolean isLong = form.group("long") != null;
        String digits = form.group("digits");
        String zeros = form.group("zeros");
        String significant = form.group("significant");
        BigInteger size =
                new BigInteger(digits).multiply(BigInteger.TEN.pow(zeros == null ? 0 : Integer.parseInt(zeros)));
        boolean fits = isLong
                ? digits.charAt(0) != '0' && size.compareTo(BigInteger.valueOf(9999)) > 0
                : digits.length() == 4 && zeros == null && significant != null;
        boolean negativeZero = size.signum() == 0 && !form.group("sign").isEmpty();
        if (!fits || negativeZero || size.compareTo(FURTHEST) > 0 || "0".equals(significant)) {
            return Optional.empty();
        }
        long year = form.group("sign").isEmpty() ? size.longValueExact() : -size.longValueExact();
        return Optional.of(new EdtfYear(
                text, year, significant == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(significant))));
    }

    /** The first and last year that agree in the significant digits. */
    private long[] range() {
        long size = Math.abs(year);
        int open = significant.isPresent() ? Long.toString(size).length() - significant.getAsInt() : 0;
        long step = 1;
        for (int i = 0; i < open; i++) {
            step *= 10;
        }
        long least = size - size % step;
        long most = least + step - 1;
        return year < 0 ? new long[] {-most, -least} : new long[] {least, most};
    }

    @Override
    public Span span() {
        long[] range = range();
        return new Span(new Edge(range[0], 1, 1), new Edge(range[1], 12, 31));
    }

    @Override
    public String words() {
        long[] range = range();
        if (range[0] == range[1]) {
            return "the year " + DateWords.year(year);
        }
        return "some time between " + DateWords.year(range[0]) + " and " + DateWords.year(range[1]) + ", estimated at "
                + DateWords.year(year);
    }
}
