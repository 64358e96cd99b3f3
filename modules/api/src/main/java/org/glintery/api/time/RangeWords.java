package org.glintery.api.time;

import java.time.LocalDate;

/** A range of dates in plain English; what both ends share is said once. */
final class RangeWords {

    private RangeWords() {}

    /** One date of the range is meant: "between March and May 2023", "before 2020". */
    static String of(EdtfRange range) {
        if (range.openAtStart()) {
            return before(range.to());
        }
        if (range.openAtEnd()) {
            return after(range.from());
        }
        if (range.from() instanceof EdtfDate from && range.to() instanceof EdtfDate to && comparable(from, to)) {
            return from.isDay() && bothApproximate(from, to)
                    ? thirds(from.firstDay(), to.firstDay())
                    : lead(from.doubt().orElseThrow()) + "between " + exact(from, to);
        }
        return "between " + range.from().words() + " and " + range.to().words();
    }

    /** All of the range is meant: "every date from 1670 to 1672". */
    static String allOf(EdtfRange range) {
        if (range.openAtStart()) {
            return "every date up to " + range.to().words();
        }
        return range.openAtEnd()
                ? "every date from " + range.from().words() + " on"
                : "every date from " + range.from().words() + " to "
                        + range.to().words();
    }

    private static String lead(Doubt doubt) {
        return doubt.lead().replace("about", "roughly");
    }

    private static boolean comparable(EdtfDate from, EdtfDate to) {
        return from.parts().size() == to.parts().size()
                && from.doubt().isPresent()
                && from.doubt().equals(to.doubt())
                && !from.leavesDigitsOpen()
                && !to.leavesDigitsOpen();
    }

    private static boolean bothApproximate(EdtfDate from, EdtfDate to) {
        return from.doubt().orElseThrow() == Doubt.APPROXIMATE && to.doubt().orElseThrow() == Doubt.APPROXIMATE;
    }

    private static String exact(EdtfDate from, EdtfDate to) {
        LocalDate first = from.firstDay();
        LocalDate last = to.firstDay();
        String end = " and " + DateWords.plain(to);
        if (from.isYear() || first.getYear() != last.getYear()) {
            return DateWords.plain(from) + end;
        }
        if (from.isMonth()) {
            return DateWords.monthName(first) + end;
        }
        return (first.getMonth() == last.getMonth() ? first.getDayOfMonth() : DateWords.dayAndMonth(first)) + end;
    }

    /** Days that are only approximate are not read to the day: "between late May and mid June 2024". */
    private static String thirds(LocalDate first, LocalDate last) {
        ThirdOfMonth start = ThirdOfMonth.of(first);
        String end = ThirdOfMonth.of(last).words() + " " + DateWords.month(last);
        if (first.getYear() != last.getYear()) {
            return "between " + start.words() + " " + DateWords.month(first) + " and " + end;
        }
        if (first.getMonth() != last.getMonth()) {
            return "between " + start.words() + " " + DateWords.monthName(first) + " and " + end;
        }
        return start == ThirdOfMonth.of(last) ? end : "between " + start.words() + " and " + end;
    }

    private static String before(Edtf last) {
        if (last instanceof EdtfDate date
                && !date.leavesDigitsOpen()
                && date.doubt().isPresent()) {
            return "before " + date.doubt().get().lead()
                    + sameGrain(date, date.lastDay().plusDays(1));
        }
        return "in or before " + last.words();
    }

    private static String after(Edtf first) {
        if (first instanceof EdtfDate date
                && !date.leavesDigitsOpen()
                && date.doubt().isPresent()) {
            return "after " + date.doubt().get().lead()
                    + sameGrain(date, date.firstDay().minusDays(1));
        }
        return "in or after " + first.words();
    }

    private static String sameGrain(EdtfDate date, LocalDate other) {
        if (date.isYear()) {
            return DateWords.year(other.getYear());
        }
        return date.isMonth() ? DateWords.month(other) : DateWords.day(other);
    }
}
