package org.glintery.benchmarks;

import java.util.Locale;

/** What a figure counts. */
enum Unit {
    SECONDS("%.2f s"),
    MILLISECONDS("%.1f ms"),
    MICROSECONDS("%.1f us"),
    A_SECOND("%,.0f/s"),
    MEGABYTES("%,.1f MB"),
    TIMES("%.2f x"),
    PIECES("%,.0f");

    private final String format;

    Unit(String format) {
        this.format = format;
    }

    String words(double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
