package org.glintery.api.time;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A year, a month or a day, perhaps doubted, perhaps with digits left open. */
record EdtfDate(List<Part> parts, Span span) implements Edtf {

    /** Empty when there is no such day. */
    static Optional<EdtfDate> of(List<Part> parts) {
        String year = parts.get(0).digits();
        String month = parts.size() > 1 ? parts.get(1).digits() : "XX";
        String day = parts.size() > 2 ? parts.get(2).digits() : "XX";
        Optional<LocalDate> last = OpenDigits.lastDay(year, month, day);
        return OpenDigits.firstDay(year, month, day)
                .map(first -> new EdtfDate(List.copyOf(parts), Span.of(first, last.orElseThrow())));
    }

    /** A date has a year of four digits; longer ones stand alone. */
    static boolean canHold(LocalDate day) {
        return Math.abs(day.getYear()) <= 9999;
    }

    static EdtfDate ofDay(LocalDate day) {
        return known(
                EdtfText.year(day.getYear()), EdtfText.two(day.getMonthValue()), EdtfText.two(day.getDayOfMonth()));
    }

    static EdtfDate ofMonth(LocalDate within) {
        return known(EdtfText.year(within.getYear()), EdtfText.two(within.getMonthValue()));
    }

    static EdtfDate ofYear(int year) {
        return known(EdtfText.year(year));
    }

    /** From digits that are known to name a day, such as {@code 199X}. */
    static EdtfDate known(String... digits) {
        return of(List.of(digits).stream().map(d -> new Part(d, Doubt.NONE)).toList())
                .orElseThrow();
    }

    /** This year or month with nothing known of the day in it. */
    EdtfDate someTimeIn() {
        String year = parts.get(0).digits();
        return known(year, parts.size() > 1 ? parts.get(1).digits() : "XX", "XX");
    }

    boolean isYear() {
        return parts.size() == 1;
    }

    boolean isMonth() {
        return parts.size() == 2;
    }

    boolean isDay() {
        return parts.size() == 3;
    }

    LocalDate firstDay() {
        return span.first().asDay().orElseThrow();
    }

    LocalDate lastDay() {
        return span.last().asDay().orElseThrow();
    }

    /** The doubt on the whole date, or empty when its parts are doubted differently. */
    Optional<Doubt> doubt() {
        Doubt first = parts.get(0).doubt();
        return parts.stream().allMatch(part -> part.doubt() == first) ? Optional.of(first) : Optional.empty();
    }

    @Override
    public boolean leavesDigitsOpen() {
        return parts.stream().anyMatch(Part::open);
    }

    @Override
    public EdtfDate doubted(Doubt doubt) {
        return new EdtfDate(Part.doubted(parts, doubt), span);
    }

    @Override
    public String text() {
        return Part.text(parts);
    }

    @Override
    public String words() {
        return DateWords.of(this);
    }
}
