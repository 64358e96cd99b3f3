package org.glintery.api.time;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One date, month, season or year in words. */
final class SinglePhrases {

    private static final Pattern FILLER = Pattern.compile("(?:in|on|at|during|within|the) (.+)");
    private static final Pattern SOME_TIME = Pattern.compile("some ?(?:time|day|month) (?:in|on|during) (.+)");
    private static final Pattern SOME_MONTH = Pattern.compile("some month in (\\d{4})");
    private static final Pattern THIRD =
            Pattern.compile("(?:the )?(early|(?:start|beginning) of|mid|middle of|late|end of)(?: in)?[ -](.+)");

    private final LocalDate today;

    SinglePhrases(LocalDate today) {
        this.today = today;
    }

    Optional<Edtf> read(String text) {
        return someTime(text)
                .or(() -> third(text))
                .or(() -> new RelativePhrases(today).read(text))
                .or(() -> new WrittenDates(today).read(text))
                .or(() -> new NamedTimes(today).read(text))
                .or(() -> withoutFiller(text));
    }

    private Optional<Edtf> withoutFiller(String text) {
        Matcher filler = FILLER.matcher(text);
        return filler.matches() ? read(filler.group(1)) : Optional.empty();
    }

    private Optional<Edtf> someTime(String text) {
        Matcher month = SOME_MONTH.matcher(text);
        if (month.matches()) {
            return Optional.of(EdtfDate.known(month.group(1), "XX"));
        }
        Matcher time = SOME_TIME.matcher(text);
        if (!time.matches()) {
            return Optional.empty();
        }
        return read(time.group(1))
                .map(found -> found instanceof EdtfDate date && !date.isDay() && !date.leavesDigitsOpen()
                        ? date.someTimeIn()
                        : found);
    }

    private Optional<Edtf> third(String text) {
        Matcher match = THIRD.matcher(text);
        if (!match.matches()) {
            return Optional.empty();
        }
        ThirdOfMonth third = switch (match.group(1).charAt(0)) {
            case 'm' -> ThirdOfMonth.MID;
            case 'l' -> ThirdOfMonth.LATE;
            default -> match.group(1).startsWith("end") ? ThirdOfMonth.LATE : ThirdOfMonth.EARLY;
        };
        return read(match.group(2)).flatMap(whole -> third(third, whole));
    }

    /** Of a year: four months. Of a month: ten days, roughly. Of a season: about one of its months. Of a decade: years. */
    private static Optional<Edtf> third(ThirdOfMonth third, Edtf whole) {
        if (whole instanceof EdtfSeason season) {
            LocalDate month = season.span().first().asDay().orElseThrow().plusMonths(third.ordinal());
            return season.season().isThreeMonths() && EdtfDate.canHold(month)
                    ? Optional.of(EdtfDate.ofMonth(month).doubted(Doubt.APPROXIMATE))
                    : Optional.empty();
        }
        if (!(whole instanceof EdtfDate date) || date.isDay()) {
            return Optional.empty();
        }
        LocalDate first = date.firstDay();
        if (date.leavesDigitsOpen()) {
            return date.isYear() ? thirdOfDecade(third, first.getYear()) : Optional.empty();
        }
        if (date.isYear()) {
            int number = SeasonOfYear.EARLY.number() + third.ordinal();
            return Optional.of(EdtfSeason.of(first.getYear(), SeasonOfYear.numbered(number)));
        }
        return EdtfRange.of(EdtfDate.ofDay(third.firstIn(first)), EdtfDate.ofDay(third.lastIn(first)))
                .map(range -> EdtfSet.oneOf(range.doubted(Doubt.APPROXIMATE)));
    }

    private static Optional<Edtf> thirdOfDecade(ThirdOfMonth third, int decade) {
        int from = third == ThirdOfMonth.EARLY ? 0 : third == ThirdOfMonth.MID ? 4 : 7;
        int to = third == ThirdOfMonth.EARLY ? 3 : third == ThirdOfMonth.MID ? 6 : 9;
        return EdtfRange.of(EdtfDate.ofYear(decade + from), EdtfDate.ofYear(decade + to))
                .map(EdtfSet::oneOf);
    }
}
