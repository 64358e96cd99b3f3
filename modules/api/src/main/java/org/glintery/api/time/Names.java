package org.glintery.api.time;

import java.time.DayOfWeek;
import java.time.Month;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The English names of months, weekdays, seasons, decades and small numbers, in lower case. */
final class Names {

    private static final Map<String, SeasonOfYear> SEASONS = Map.of(
            "spring", SeasonOfYear.SPRING,
            "summer", SeasonOfYear.SUMMER,
            "autumn", SeasonOfYear.AUTUMN,
            "fall", SeasonOfYear.AUTUMN,
            "winter", SeasonOfYear.WINTER);

    private static final Map<String, Integer> DECADES = Map.of(
            "twenties",
            20,
            "thirties",
            30,
            "forties",
            40,
            "fifties",
            50,
            "sixties",
            60,
            "seventies",
            70,
            "eighties",
            80,
            "nineties",
            90,
            "noughties",
            0);

    private static final List<String> NUMBERS = List.of(
            "a", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    private Names() {}

    /** In full, by its first three letters, or "sept". */
    static Optional<Month> month(String word) {
        String name = word.equals("sept") ? "sep" : word;
        for (Month month : Month.values()) {
            if (isNamed(month, name)) {
                return Optional.of(month);
            }
        }
        return Optional.empty();
    }

    static Optional<DayOfWeek> weekday(String word) {
        for (DayOfWeek day : DayOfWeek.values()) {
            if (isNamed(day, word)) {
                return Optional.of(day);
            }
        }
        return Optional.empty();
    }

    private static boolean isNamed(Enum<?> value, String word) {
        String full = value.name().toLowerCase(Locale.ROOT);
        return word.equals(full) || word.equals(full.substring(0, 3));
    }

    static Optional<SeasonOfYear> season(String word) {
        return Optional.ofNullable(SEASONS.get(word));
    }

    /** The last two digits of the first year: 90 for "nineties". */
    static Optional<Integer> decade(String word) {
        return Optional.ofNullable(DECADES.get(word));
    }

    /** "three", "a" or "3". */
    static Optional<Integer> number(String word) {
        if (word.matches("\\d{1,4}")) {
            return Optional.of(Integer.parseInt(word));
        }
        int place = word.equals("an") ? 0 : NUMBERS.indexOf(word);
        return place < 0 ? Optional.empty() : Optional.of(Math.max(1, place));
    }
}
