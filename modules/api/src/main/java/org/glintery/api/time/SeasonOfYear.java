package org.glintery.api.time;

import java.time.LocalDate;

/**
 * The divisions of a year that the format numbers 21 to 41. It gives seasons no months: the meteorological ones are
 * taken here, and a season without a hemisphere is a northern one. A winter, or a southern summer, begins in the year
 * it is named after and ends in the next.
 */
enum SeasonOfYear {
    SPRING(21, 3, 3, "spring"),
    SUMMER(22, 6, 3, "summer"),
    AUTUMN(23, 9, 3, "autumn"),
    WINTER(24, 12, 3, "winter"),
    NORTHERN_SPRING(25, 3, 3, "northern spring"),
    NORTHERN_SUMMER(26, 6, 3, "northern summer"),
    NORTHERN_AUTUMN(27, 9, 3, "northern autumn"),
    NORTHERN_WINTER(28, 12, 3, "northern winter"),
    SOUTHERN_SPRING(29, 9, 3, "southern spring"),
    SOUTHERN_SUMMER(30, 12, 3, "southern summer"),
    SOUTHERN_AUTUMN(31, 3, 3, "southern autumn"),
    SOUTHERN_WINTER(32, 6, 3, "southern winter"),
    FIRST_QUARTER(33, 1, 3, "the first quarter of"),
    SECOND_QUARTER(34, 4, 3, "the second quarter of"),
    THIRD_QUARTER(35, 7, 3, "the third quarter of"),
    LAST_QUARTER(36, 10, 3, "the last quarter of"),
    EARLY(37, 1, 4, "early"),
    MID(38, 5, 4, "mid"),
    LATE(39, 9, 4, "late"),
    FIRST_HALF(40, 1, 6, "the first half of"),
    SECOND_HALF(41, 7, 6, "the second half of");

    private final int number;
    private final int firstMonth;
    private final int months;
    private final String name;

    SeasonOfYear(int number, int firstMonth, int months, String name) {
        this.number = number;
        this.firstMonth = firstMonth;
        this.months = months;
        this.name = name;
    }

    /** Whether the format has a division of this number. */
    static boolean exists(int number) {
        return number >= SPRING.number && number <= SECOND_HALF.number;
    }

    static SeasonOfYear numbered(int number) {
        return values()[number - SPRING.number];
    }

    int number() {
        return number;
    }

    boolean isThreeMonths() {
        return months == 3;
    }

    Span in(int year) {
        LocalDate first = LocalDate.of(year, firstMonth, 1);
        return Span.of(first, first.plusMonths(months).minusDays(1));
    }

    /** "autumn 2023", "winter 2023/24", "early 2022". */
    String words(int year) {
        boolean runsOver = firstMonth + months > 13;
        String nextYear = runsOver && year > 0 ? "/" + EdtfText.two((year + 1) % 100) : "";
        return name + " " + DateWords.year(year) + nextYear;
    }
}
