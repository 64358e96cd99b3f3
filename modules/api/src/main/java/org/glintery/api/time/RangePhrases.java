package org.glintery.api.time;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** "between March and May 2023", "from 2019 to 2021", "before 2020", "2019 or 2020". Each end may be any phrase. */
final class RangePhrases {

    private static final Pattern BETWEEN = Pattern.compile("(?:some ?time )?between (.+) and (.+)");
    private static final Pattern FROM_TO = Pattern.compile("(?:from )?(.+) (?:to|until|till|through|-) (.+)");
    private static final Pattern OPEN =
            Pattern.compile("(?:some ?time )?(in or before|in or after|before|by|until|till|up to|after|since) (.+)");
    private static final Pattern EITHER = Pattern.compile("(?:either )?(.+) or (.+)");
    private static final Pattern NAMES_YEAR = Pattern.compile("\\b\\d{4}\\b");
    private static final Pattern TOLD_FROM_TODAY = Pattern.compile("\\b(?:ago|last|this|today|yesterday|now)\\b");
    private static final Pattern BARE_DAY = Pattern.compile("\\d{1,2}(?:st|nd|rd|th)?");
    private static final Pattern DAY_AND_REST = Pattern.compile("\\d{1,2}(?:st|nd|rd|th)? (.+)");
    private static final Pattern BARE_THIRD = Pattern.compile("early|mid|late");
    private static final Pattern THIRD_AND_REST = Pattern.compile("(?:early|mid|late)[ -](.+)");

    private final LocalDate today;

    RangePhrases(LocalDate today) {
        this.today = today;
    }

    Optional<Edtf> read(String text) {
        Matcher between = BETWEEN.matcher(text);
        if (between.matches()) {
            return ends(between).flatMap(e -> EdtfRange.of(e.from(), e.to())).map(EdtfSet::oneOf);
        }
        Matcher fromTo = FROM_TO.matcher(text);
        if (fromTo.matches()) {
            return ends(fromTo).flatMap(e -> EdtfInterval.of(e.from(), e.to()));
        }
        Matcher open = OPEN.matcher(text);
        if (open.matches()) {
            return Phrases.withoutRanges(today)
                    .plain(open.group(2))
                    .filter(date -> !date.words().equals(DateWords.NOT_KNOWN))
                    .flatMap(date -> open(open.group(1), date));
        }
        Matcher either = EITHER.matcher(text);
        return either.matches() ? ends(either).map(e -> EdtfSet.oneOf(e.from(), e.to())) : Optional.empty();
    }

    private record Ends(Edtf from, Edtf to) {}

    private Optional<Ends> ends(Matcher match) {
        String later = match.group(2);
        String earlier = completed(match.group(1), later);
        Optional<Edtf> to = later(later, earlier).map(RangePhrases::lastOf);
        return to.flatMap(
                        end -> earlier(earlier, end).map(RangePhrases::firstOf).map(start -> new Ends(start, end)))
                .filter(e -> canEnd(e.from()) && canEnd(e.to()));
    }

    /** "between 12 and 20 May": the first end borrows what the second says after its number. */
    private static String completed(String earlier, String later) {
        Matcher day = DAY_AND_REST.matcher(later);
        if (BARE_DAY.matcher(earlier).matches() && day.matches()) {
            return earlier + " " + day.group(1);
        }
        Matcher third = THIRD_AND_REST.matcher(later);
        return BARE_THIRD.matcher(earlier).matches() && third.matches() ? earlier + " " + third.group(1) : earlier;
    }

    /** A later end without a year follows an earlier one that has it: "between November 2023 and February". */
    private Optional<Edtf> later(String later, String earlier) {
        Phrases phrases = Phrases.withoutRanges(today);
        Matcher year = NAMES_YEAR.matcher(earlier);
        if (!year.find() || NAMES_YEAR.matcher(later).find()) {
            return phrases.plain(later);
        }
        int said = Integer.parseInt(year.group());
        return phrases.plain(earlier)
                .flatMap(start -> phrases.plain(later + " " + said)
                        .filter(end -> Edtf.inOrder(start, end))
                        .or(() -> phrases.plain(later + " " + (said + 1))))
                .or(() -> phrases.plain(later));
    }

    /** An earlier end without a year is the last one before the later end, unless it is told from today. */
    private Optional<Edtf> earlier(String earlier, Edtf end) {
        LocalDate seenFrom = TOLD_FROM_TODAY.matcher(earlier).find()
                ? today
                : end.span().last().asDay().orElse(today);
        return Phrases.withoutRanges(seenFrom).plain(earlier);
    }

    private static Edtf firstOf(Edtf date) {
        return date instanceof EdtfSet set && set.members().get(0) instanceof EdtfRange range ? range.from() : date;
    }

    private static Edtf lastOf(Edtf date) {
        return date instanceof EdtfSet set && set.members().get(0) instanceof EdtfRange range ? range.to() : date;
    }

    private static boolean canEnd(Edtf date) {
        return date instanceof EdtfDate || date instanceof EdtfSeason;
    }

    private static Optional<Edtf> open(String word, Edtf date) {
        return switch (word) {
            case "before" ->
                neighbour(date, -1)
                        .flatMap(last -> EdtfRange.of(OpenEnd.OPEN, last))
                        .map(EdtfSet::oneOf);
            case "after" ->
                neighbour(date, 1)
                        .flatMap(first -> EdtfRange.of(first, OpenEnd.OPEN))
                        .map(EdtfSet::oneOf);
            case "by", "in or before" ->
                Optional.of(lastOf(date))
                        .filter(RangePhrases::canEnd)
                        .flatMap(last -> EdtfRange.of(OpenEnd.OPEN, last))
                        .map(EdtfSet::oneOf);
            case "in or after" ->
                Optional.of(firstOf(date))
                        .filter(RangePhrases::canEnd)
                        .flatMap(first -> EdtfRange.of(first, OpenEnd.OPEN))
                        .map(EdtfSet::oneOf);
            case "since" ->
                Optional.of(firstOf(date))
                        .filter(RangePhrases::canEnd)
                        .flatMap(start -> EdtfInterval.of(start, OpenEnd.OPEN));
            default ->
                Optional.of(lastOf(date))
                        .filter(RangePhrases::canEnd)
                        .flatMap(end -> EdtfInterval.of(OpenEnd.OPEN, end));
        };
    }

    /** The year before a year, the month before a month, else the day before; with the same doubt. */
    private static Optional<Edtf> neighbour(Edtf date, int direction) {
        Edge edge = direction < 0 ? date.span().first() : date.span().last();
        return edge.asDay()
                .map(day -> day.plusDays(direction))
                .filter(EdtfDate::canHold)
                .map(day -> {
                    if (date instanceof EdtfDate plain && !plain.leavesDigitsOpen()) {
                        EdtfDate next = plain.isYear()
                                ? EdtfDate.ofYear(day.getYear())
                                : plain.isMonth() ? EdtfDate.ofMonth(day) : EdtfDate.ofDay(day);
                        return next.doubted(plain.doubt().orElse(Doubt.NONE));
                    }
                    return EdtfDate.ofDay(day);
                });
    }
}
