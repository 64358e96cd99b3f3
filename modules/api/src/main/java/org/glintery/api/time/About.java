package org.glintery.api.time;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.glintery.api.Stable;

/**
 * When something happened, as exactly as it is known: a date, a season, a range, something doubted or not known. It is
 * kept as text of the Extended Date/Time Format, levels 0 to 2 (ISO 8601-2:2019; Library of Congress, EDTF
 * specification, 2019-02-04), always in one canonical form, so that equal text is equal meaning for all marks of doubt.
 *
 * <p>Bounds are whole days, both included, in the calendar extended backwards without a break. A doubt (?, ~, %) does
 * not widen them. A time of day is kept but the bounds are the day it was written for. Seasons have the meteorological
 * months of the north; see {@link #words()}. Immutable and safe for any thread.
 */
@Stable
public final class About implements Comparable<About> {
    private static final Pattern EITHER = Pattern.compile("(?<![\\d/-])(\\d{1,2})([/-])(\\d{1,2})(?!\\d)");
    private static final Comparator<About> ORDER = Comparator.comparing((About about) -> about.span.first())
            .thenComparing(about -> about.span.last())
            .thenComparing(about -> about.text);

    private final Edtf meaning;
    private final Span span;
    private final String text;

    private About(Edtf meaning) {
        this.meaning = meaning;
        this.span = meaning.span();
        this.text = meaning.text();
    }

    /**
     * A day that is known.
     *
     * @throws IllegalArgumentException for a year of more than four digits
     */
    public static About on(LocalDate day) {
        if (Math.abs(day.getYear()) > 9999) {
            throw new IllegalArgumentException("a year of more than four digits: " + day);
        }
        return new About(EdtfDate.ofDay(day));
    }

    /**
     * Some day from about the first to about the last, both included, printed by thirds of a month: "between late May and
     * mid June 2024".
     *
     * @throws IllegalArgumentException when the last day lies before the first
     */
    public static About roughlyBetween(LocalDate first, LocalDate last) {
        return EdtfRange.of(EdtfDate.ofDay(first), EdtfDate.ofDay(last))
                .map(range -> new About(EdtfSet.oneOf(range.doubted(Doubt.APPROXIMATE))))
                .orElseThrow(() -> new IllegalArgumentException(last + " lies before " + first));
    }

    /**
     * Reads EDTF levels 0 to 2. Empty when the text is not EDTF, names a day that does not exist or an interval that ends
     * before it begins. Years beyond 10 to the 18th are not read.
     */
    public static Optional<About> edtf(String text) {
        return EdtfParser.parse(text).map(About::new);
    }

    /**
     * Reads what people type, in English: "about October", "autumn 2023", "some time in 2021", "last spring",
     * "12/3/2024" (the day first, where both readings are possible), "between March and May 2023", "before 2020",
     * "the nineties", "not known"; and EDTF itself. What has no year means the latest time that has begun by today.
     * Show {@link #words()} of what was understood. Empty when it is not understood.
     */
    public static Optional<About> said(String words, LocalDate today) {
        return new Phrases(today).read(words).map(About::new);
    }

    /**
     * What {@link #said} would have read with the month first, where both readings are possible: 4 March beside 3 April for
     * "3/4/2025". Empty where only one is, and for days written with dots, which stand first wherever that is done.
     */
    public static Optional<About> otherwise(String words, LocalDate today) {
        Matcher numbers = EITHER.matcher(words);
        if (!numbers.find()) {
            return Optional.empty();
        }
        Optional<About> read = said(words, today);
        return said(numbers.replaceAll("$3$2$1"), today)
                .filter(other -> read.filter(r -> !r.equals(other)).isPresent());
    }

    /** The first day it can have been; empty when open, not known, or in a year that a LocalDate cannot hold. */
    public Optional<LocalDate> earliest() {
        return span.first().asDay();
    }

    /** The last day it can have been; empty when open, not known, or in a year that a LocalDate cannot hold. */
    public Optional<LocalDate> latest() {
        return span.last().asDay();
    }

    /**
     * Whether it can have been on one of the days from the first to the last, both included. Gaps between the members of a
     * set count; those that open digits leave do not. False when the last lies before the first.
     */
    public boolean overlaps(LocalDate from, LocalDate to) {
        return !to.isBefore(from) && meaning.overlaps(Span.of(from, to));
    }

    /**
     * In plain English: "about October 2024", "some time in 2021", "12 March 2024", "winter 2023/24", "before 2020".
     * {@link #said} understands its own words for all that people say.
     */
    public String words() {
        return meaning.words();
    }

    /** By the first day, then the last, then the text. What is open at its start comes first. */
    @Override
    public int compareTo(About other) {
        return ORDER.compare(this, other);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof About about && about.text.equals(text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    /** The canonical EDTF text, which {@link #edtf} reads back to an equal value. */
    @Override
    public String toString() {
        return text;
    }
}
