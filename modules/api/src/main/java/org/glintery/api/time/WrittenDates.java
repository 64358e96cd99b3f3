package org.glintery.api.time;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Days and months as they are written down: "12 March 2024", "March 12", "12/3/2024", "3/2024". */
final class WrittenDates {

    private static final String WEEKDAY = "(?:[a-z]+day,? )?";
    private static final String DAY = "(\\d{1,2})(?:st|nd|rd|th)?";
    private static final Pattern DAY_MONTH =
            Pattern.compile(WEEKDAY + "(?:the )?" + DAY + "(?: of)? ([a-z]+)\\.?(?:,? (?:of )?(\\d{4}))?");
    private static final Pattern MONTH_DAY =
            Pattern.compile(WEEKDAY + "([a-z]+)\\.? (?:the )?" + DAY + "(?:,? (\\d{4}))?");
    private static final Pattern MONTH = Pattern.compile("(last )?(?:this )?([a-z]+)\\.?(?:,? (?:of )?(\\d{4}))?");
    private static final Pattern NUMBERS = Pattern.compile("(\\d{1,2})[/.-](\\d{1,2})(?:[/.-](\\d{4}|\\d{2}))?");
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})[/.-](\\d{1,2})(?:[/.-](\\d{1,2}))?");
    private static final Pattern MONTH_AND_YEAR = Pattern.compile("(\\d{1,2})[/.-](\\d{4})");

    private final LocalDate today;

    WrittenDates(LocalDate today) {
        this.today = today;
    }

    Optional<Edtf> read(String text) {
        Matcher dayMonth = DAY_MONTH.matcher(text);
        if (dayMonth.matches()) {
            return named(dayMonth.group(2), dayMonth.group(1), dayMonth.group(3));
        }
        Matcher monthDay = MONTH_DAY.matcher(text);
        if (monthDay.matches()) {
            return named(monthDay.group(1), monthDay.group(2), monthDay.group(3));
        }
        Matcher month = MONTH.matcher(text);
        if (month.matches()) {
            return Names.month(month.group(2)).flatMap(m -> month(m, month.group(3), month.group(1) != null));
        }
        return inNumbers(text).map(Edtf.class::cast);
    }

    private Optional<Edtf> named(String monthName, String day, String year) {
        return Names.month(monthName)
                .flatMap(month -> day(Integer.parseInt(day), month.getValue(), Optional.ofNullable(year)))
                .map(Edtf.class::cast);
    }

    private Optional<Edtf> month(Month month, String year, boolean last) {
        if (year != null) {
            return Optional.of(monthOf(Integer.parseInt(year), month));
        }
        return (last
                        ? Years.latestOver(y -> Optional.of(monthOf(y, month)), today)
                        : Years.latestBegun(y -> Optional.of(monthOf(y, month)), today))
                .map(Edtf.class::cast);
    }

    private static EdtfDate monthOf(int year, Month month) {
        return EdtfDate.ofMonth(YearMonth.of(year, month).atDay(1));
    }

    /** The day stands first where both readings are possible, as most of the world writes it. */
    private Optional<EdtfDate> inNumbers(String text) {
        Matcher numbers = NUMBERS.matcher(text);
        if (numbers.matches()) {
            int first = Integer.parseInt(numbers.group(1));
            int second = Integer.parseInt(numbers.group(2));
            Optional<String> year = Optional.ofNullable(numbers.group(3));
            return day(first, second, year).or(() -> day(second, first, year));
        }
        Matcher yearFirst = YEAR_FIRST.matcher(text);
        if (yearFirst.matches()) {
            int year = Integer.parseInt(yearFirst.group(1));
            int month = Integer.parseInt(yearFirst.group(2));
            return yearFirst.group(3) == null
                    ? day(year, month, 1).map(EdtfDate::ofMonth)
                    : day(year, month, Integer.parseInt(yearFirst.group(3))).map(EdtfDate::ofDay);
        }
        Matcher monthAndYear = MONTH_AND_YEAR.matcher(text);
        return monthAndYear.matches()
                ? day(Integer.parseInt(monthAndYear.group(2)), Integer.parseInt(monthAndYear.group(1)), 1)
                        .map(EdtfDate::ofMonth)
                : Optional.empty();
    }

    private Optional<EdtfDate> day(int day, int month, Optional<String> year) {
        return year.isPresent()
                ? day(fullYear(year.get()), month, day).map(EdtfDate::ofDay)
                : Years.latestBegun(y -> day(y, month, day).map(EdtfDate::ofDay), today);
    }

    private int fullYear(String year) {
        int number = Integer.parseInt(year);
        return year.length() == 2 ? Years.fromTwoDigits(number, today) : number;
    }

    private static Optional<LocalDate> day(int year, int month, int day) {
        try {
            return Optional.of(LocalDate.of(year, month, day));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }
}
