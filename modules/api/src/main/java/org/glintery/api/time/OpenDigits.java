package org.glintery.api.time;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.IntStream;

/** The days that a date with open digits (X) can be. A month or day not given counts as XX. */
final class OpenDigits {

    private OpenDigits() {}

    /** The first day that fits; empty when none does, as with 31 June. */
    static Optional<LocalDate> firstDay(String year, String month, String day) {
        return find(year, month, day, false);
    }

    static Optional<LocalDate> lastDay(String year, String month, String day) {
        return find(year, month, day, true);
    }

    private static Optional<LocalDate> find(String year, String month, String day, boolean fromTheEnd) {
        if (isWhole(year) && isWhole(month) && isWhole(day)) { // nearly all there are: a workshop opens with thousands
            int y = Integer.parseInt(year);
            return y == 0 && year.startsWith("-")
                    ? Optional.empty()
                    : day(y, Integer.parseInt(month), Integer.parseInt(day));
        }
        int[] months = inOrder(fitting(month, 1, 12), fromTheEnd);
        int[] days = inOrder(fitting(day, 1, 31), fromTheEnd);
        for (int y : inOrder(years(year), fromTheEnd)) {
            for (int m : months) {
                for (int d : days) {
                    Optional<LocalDate> found = day(y, m, d);
                    if (found.isPresent()) {
                        return found;
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<LocalDate> day(int year, int month, int day) {
        try {
            return Optional.of(LocalDate.of(year, month, day));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    /** There is a year 0, but no year -0. */
    private static IntStream years(String pattern) {
        return pattern.startsWith("-")
                ? fitting(pattern.substring(1), 1, 9999).map(y -> -y)
                : fitting(pattern, 0, 9999);
    }

    private static IntStream fitting(String pattern, int least, int most) {
        if (isWhole(pattern)) {
            int number = Integer.parseInt(pattern);
            return number < least || number > most ? IntStream.empty() : IntStream.of(number);
        }
        return IntStream.rangeClosed(least, most).filter(number -> fits(number, pattern));
    }

    private static boolean isWhole(String pattern) {
        return pattern.indexOf('X') < 0;
    }

    private static boolean fits(int number, String pattern) {
        int rest = number;
        for (int i = pattern.length() - 1; i >= 0; i--) {
            if (pattern.charAt(i) != 'X' && pattern.charAt(i) - '0' != rest % 10) {
                return false;
            }
            rest /= 10;
        }
        return rest == 0;
    }

    private static int[] inOrder(IntStream numbers, boolean fromTheEnd) {
        return (fromTheEnd ? numbers.map(n -> -n).sorted().map(n -> -n) : numbers.sorted()).toArray();
    }
}
