package org.glintery.api.time;

import java.time.LocalDate;
import java.util.Locale;

/** Early, mid and late in a month: the first ten days, the next ten, the rest. */
enum ThirdOfMonth {
    EARLY,
    MID,
    LATE;

    static ThirdOfMonth of(LocalDate day) {
        return values()[Math.min(2, (day.getDayOfMonth() - 1) / 10)];
    }

    LocalDate firstIn(LocalDate month) {
        return month.withDayOfMonth(1 + 10 * ordinal());
    }

    LocalDate lastIn(LocalDate month) {
        return month.withDayOfMonth(this == LATE ? month.lengthOfMonth() : 10 + 10 * ordinal());
    }

    String words() {
        return name().toLowerCase(Locale.ROOT);
    }
}
