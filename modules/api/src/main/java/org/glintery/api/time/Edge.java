package org.glintery.api.time;

import java.time.LocalDate;
import java.time.Year;
import java.util.Comparator;
import java.util.Optional;

/**
 * One end of a span: a day, or the beginning or end of time. Years of geology fit, which a {@link LocalDate} cannot hold.
 */
record Edge(long year, int month, int day) implements Comparable<Edge> {

    static final Edge BEGINNING_OF_TIME = new Edge(Long.MIN_VALUE, 1, 1);
    static final Edge END_OF_TIME = new Edge(Long.MAX_VALUE, 12, 31);

    private static final Comparator<Edge> ORDER =
            Comparator.comparingLong(Edge::year).thenComparingInt(Edge::month).thenComparingInt(Edge::day);

    static Edge of(LocalDate day) {
        return new Edge(day.getYear(), day.getMonthValue(), day.getDayOfMonth());
    }

    /** Empty at the ends of time, and for years that a calendar class cannot hold. */
    Optional<LocalDate> asDay() {
        return year < Year.MIN_VALUE || year > Year.MAX_VALUE
                ? Optional.empty()
                : Optional.of(LocalDate.of((int) year, month, day));
    }

    @Override
    public int compareTo(Edge other) {
        return ORDER.compare(this, other);
    }
}
