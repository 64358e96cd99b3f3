package org.glintery.api.time;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A single date in plain English. */
final class DateWords {

    static final String NOT_KNOWN = "not known";

    private DateWords() {}

    static String of(EdtfDate date) {
        List<Doubt> doubts = date.parts().stream().map(Part::doubt).toList();
        String plain = plain(date);
        return date.doubt()
                .map(doubt -> doubt.lead() + plain)
                .orElseGet(() -> plain + differingDoubts(List.of("year", "month", "day"), doubts));
    }

    /** ", year uncertain, month approximate": where the doubt is not the same on all parts. */
    static String differingDoubts(List<String> names, List<Doubt> doubts) {
        List<String> notes = new ArrayList<>();
        for (int i = 0; i < doubts.size(); i++) {
            switch (doubts.get(i)) {
                case NONE -> {}
                case UNCERTAIN -> notes.add(", " + names.get(i) + " uncertain");
                case APPROXIMATE -> notes.add(", " + names.get(i) + " approximate");
                case BOTH -> notes.add(", " + names.get(i) + " uncertain and approximate");
            }
        }
        return String.join("", notes);
    }

    /** The date without its doubts. */
    static String plain(EdtfDate date) {
        return date.leavesDigitsOpen() ? withOpenDigits(date) : exact(date);
    }

    private static String exact(EdtfDate date) {
        LocalDate first = date.firstDay();
        return switch (date.parts().size()) {
            case 1 -> year(first.getYear());
            case 2 -> month(first);
            default -> day(first);
        };
    }

    static String day(LocalDate day) {
        return dayAndMonth(day) + " " + year(day.getYear());
    }

    static String dayAndMonth(LocalDate day) {
        return day.getDayOfMonth() + " " + monthName(day);
    }

    static String month(LocalDate within) {
        return monthName(within) + " " + year(within.getYear());
    }

    static String monthName(LocalDate within) {
        return within.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    /** The year 0 of the format is 1 BC. */
    static String year(long year) {
        return year > 0 ? Long.toString(year) : (1 - year) + " BC";
    }

    private static String withOpenDigits(EdtfDate date) {
        Part year = date.parts().get(0);
        boolean restOpen = date.parts().stream().skip(1).allMatch(Part::allOpen);
        if (year.allOpen()) {
            return restOpen ? NOT_KNOWN : yearNotKnown(date);
        }
        if (year.open()) {
            return restOpen && year.digits().matches("\\d{3}X")
                    ? "some time in the " + date.firstDay().getYear() + "s"
                    : betweenFirstAndLast(date, date.isYear() && year.digits().matches("\\d\\dXX"));
        }
        if (restOpen) {
            return (date.isMonth() ? "some month in " : "some time in ")
                    + year(date.firstDay().getYear());
        }
        boolean onlyDayOpen = !date.parts().get(1).open() && date.parts().get(2).allOpen();
        return onlyDayOpen ? "some time in " + month(date.firstDay()) : betweenFirstAndLast(date, false);
    }

    private static String yearNotKnown(EdtfDate date) {
        boolean monthKnown = !date.parts().get(1).open();
        if (!monthKnown
                || date.isDay()
                        && date.parts().get(2).open()
                        && !date.parts().get(2).allOpen()) {
            return betweenFirstAndLast(date, false);
        }
        boolean dayKnown = date.isDay() && !date.parts().get(2).open();
        return (dayKnown ? dayAndMonth(date.firstDay()) : monthName(date.firstDay())) + ", year not known";
    }

    /** The text itself stands beside it where the two days alone would say less. */
    private static String betweenFirstAndLast(EdtfDate date, boolean yearsSayAll) {
        if (yearsSayAll) {
            return "some time between " + year(date.firstDay().getYear()) + " and "
                    + year(date.lastDay().getYear());
        }
        StringBuilder digits = new StringBuilder();
        date.parts().forEach(part -> digits.append(digits.isEmpty() ? "" : "-").append(part.digits()));
        return "some time between " + day(date.firstDay()) + " and " + day(date.lastDay()) + " (" + digits + ")";
    }
}
