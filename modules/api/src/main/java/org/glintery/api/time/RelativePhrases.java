package org.glintery.api.time;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is told from today: "yesterday", "last week", "three weeks ago", "on Saturday". */
final class RelativePhrases {

    private static final Pattern AGO = Pattern.compile("(\\w+) (day|week|fortnight|month|year)s? ago");
    private static final Pattern WHOLE = Pattern.compile("(this|last) (week|month|year)");
    private static final Pattern WEEKDAY = Pattern.compile("(last |this )?(\\w+)");
    /** More would leave the years a calendar writes with four digits. */
    private static final int MOST_AGO = 1_000;

    private final LocalDate today;

    RelativePhrases(LocalDate today) {
        this.today = today;
    }

    Optional<Edtf> read(String text) {
        return switch (text) {
            case "today", "now", "just now", "this morning", "tonight" -> Optional.of(EdtfDate.ofDay(today));
            case "yesterday", "last night" -> Optional.of(EdtfDate.ofDay(today.minusDays(1)));
            case "day before yesterday" -> Optional.of(EdtfDate.ofDay(today.minusDays(2)));
            default -> ago(text).or(() -> whole(text)).or(() -> weekday(text));
        };
    }

    /** Days are counted; weeks, months and years are said roughly. */
    private Optional<Edtf> ago(String text) {
        Matcher match = AGO.matcher(text);
        if (!match.matches()) {
            return Optional.empty();
        }
        return Names.number(match.group(1)).filter(count -> count <= MOST_AGO).map(count -> switch (match.group(2)) {
            case "day" -> EdtfDate.ofDay(today.minusDays(count));
            case "week" -> EdtfDate.ofDay(today.minusWeeks(count)).doubted(Doubt.APPROXIMATE);
            case "fortnight" -> EdtfDate.ofDay(today.minusWeeks(2L * count)).doubted(Doubt.APPROXIMATE);
            case "month" -> EdtfDate.ofMonth(today.minusMonths(count)).doubted(Doubt.APPROXIMATE);
            default -> EdtfDate.ofYear(today.getYear() - count).doubted(Doubt.APPROXIMATE);
        });
    }

    private Optional<Edtf> whole(String text) {
        Matcher match = WHOLE.matcher(text);
        if (!match.matches()) {
            return Optional.empty();
        }
        int back = match.group(1).equals("last") ? 1 : 0;
        return switch (match.group(2)) {
            case "month" -> Optional.of(EdtfDate.ofMonth(today.minusMonths(back)));
            case "year" -> Optional.of(EdtfDate.ofYear(today.getYear() - back));
            default -> {
                LocalDate monday = today.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY))
                        .minusWeeks(back);
                yield EdtfRange.of(EdtfDate.ofDay(monday), EdtfDate.ofDay(monday.plusDays(6)))
                        .map(EdtfSet::oneOf);
            }
        };
    }

    private Optional<Edtf> weekday(String text) {
        Matcher match = WEEKDAY.matcher(text);
        if (!match.matches()) {
            return Optional.empty();
        }
        boolean last = "last ".equals(match.group(1));
        return Names.weekday(match.group(2))
                .map(day -> EdtfDate.ofDay(
                        today.with(last ? TemporalAdjusters.previous(day) : TemporalAdjusters.previousOrSame(day))));
    }
}
