package org.glintery.api.time;

import java.util.Locale;

/** Numbers as the format writes them. */
final class EdtfText {

    private EdtfText() {}

    static String two(int number) {
        return String.format(Locale.ROOT, "%02d", number);
    }

    /** Four digits, with a sign before the year 0. */
    static String year(int year) {
        return (year < 0 ? "-" : "") + String.format(Locale.ROOT, "%04d", Math.abs(year));
    }
}
