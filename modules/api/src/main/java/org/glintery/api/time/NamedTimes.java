package org.glintery.api.time;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Years, seasons, decades and the two feasts that people date by. */
final class NamedTimes {

    private static final Pattern YEAR = Pattern.compile("(\\d{4})");
    private static final Pattern SEASON =
            Pattern.compile("(last )?(?:this )?([a-z]+)(?: (?:of |in )?(\\d{4})(?:[/-]\\d{2,4})?)?");
    private static final Pattern PART_OF_YEAR =
            Pattern.compile("(first|second|third|last|fourth) (quarter|half) of (\\d{4})");
    private static final Pattern DECADE = Pattern.compile("(\\d{3})0'?s");
    private static final Pattern SHORT_DECADE = Pattern.compile("'?(\\d)0'?s|([a-z]+)");
    private static final Pattern FEAST =
            Pattern.compile("(last )?(?:this )?(easter|christmas)(?: (?:of |in )?(\\d{4}))?");

    private final LocalDate today;

    NamedTimes(LocalDate today) {
        this.today = today;
    }

    Optional<Edtf> read(String text) {
        Matcher year = YEAR.matcher(text);
        return year.matches()
                ? Optional.of(EdtfDate.known(year.group(1)))
                : season(text).or(() -> partOfYear(text)).or(() -> decade(text)).or(() -> feast(text));
    }

    private Optional<Edtf> season(String text) {
        Matcher match = SEASON.matcher(text);
        if (!match.matches()) {
            return Optional.empty();
        }
        return Names.season(match.group(2))
                .flatMap(season -> inYear(match.group(3), match.group(1) != null, year -> EdtfSeason.of(year, season)));
    }

    private Optional<Edtf> partOfYear(String text) {
        Matcher match = PART_OF_YEAR.matcher(text);
        if (!match.matches()) {
            return Optional.empty();
        }
        boolean half = match.group(2).equals("half");
        SeasonOfYear first = half ? SeasonOfYear.FIRST_HALF : SeasonOfYear.FIRST_QUARTER;
        int parts = half ? 2 : 4;
        int place = switch (match.group(1)) {
            case "first" -> 0;
            case "second" -> 1;
            case "third" -> 2;
            case "fourth" -> 3;
            default -> parts - 1;
        };
        return place >= parts
                ? Optional.empty()
                : Optional.of(
                        EdtfSeason.of(Integer.parseInt(match.group(3)), SeasonOfYear.numbered(first.number() + place)));
    }

    private Optional<Edtf> decade(String text) {
        Matcher full = DECADE.matcher(text);
        if (full.matches()) {
            return Optional.of(EdtfDate.known(full.group(1) + "X"));
        }
        Matcher brief = SHORT_DECADE.matcher(text);
        if (!brief.matches()) {
            return Optional.empty();
        }
        Optional<Integer> digits = brief.group(1) != null
                ? Optional.of(10 * Integer.parseInt(brief.group(1)))
                : Names.decade(brief.group(2));
        return digits.map(d -> Years.fromTwoDigits(d, today))
                .map(first -> EdtfDate.known(EdtfText.year(first).substring(0, 3) + "X"));
    }

    /** People who date by a feast mean the days about it. */
    private Optional<Edtf> feast(String text) {
        Matcher match = FEAST.matcher(text);
        if (!match.matches()) {
            return Optional.empty();
        }
        boolean easter = match.group(2).equals("easter");
        return inYear(
                match.group(3),
                match.group(1) != null,
                year -> EdtfDate.ofDay(easter ? easterSunday(year) : LocalDate.of(year, 12, 25))
                        .doubted(Doubt.APPROXIMATE));
    }

    private <T extends Edtf> Optional<Edtf> inYear(String year, boolean last, IntFunction<T> time) {
        if (year != null) {
            return Optional.of(time.apply(Integer.parseInt(year)));
        }
        return (last
                        ? Years.latestOver(y -> Optional.of(time.apply(y)), today)
                        : Years.latestBegun(y -> Optional.of(time.apply(y)), today))
                .map(Edtf.class::cast);
    }

    /** The western Easter by the Gregorian computus: Meeus, Astronomical Algorithms, 2nd ed. 1998, chapter 8. */
    private static LocalDate easterSunday(int year) {
        int a = year % 19;
        int b = year / 100;
        int c = year % 100;
        int f = (b + 8) / 25;
        int g = (b - f + 1) / 3;
        int h = (19 * a + b - b / 4 - g + 15) % 30;
        int l = (32 + 2 * (b % 4) + 2 * (c / 4) - h - c % 4) % 7;
        int m = (a + 11 * h + 22 * l) / 451;
        int n = h + l - 7 * m + 114;
        return LocalDate.of(year, n / 31, n % 31 + 1);
    }
}
