package org.glintery.api.time;

import java.time.LocalDate;

/** From the first day to the last, both included. */
record Span(Edge first, Edge last) {

    static final Span ALL_TIME = new Span(Edge.BEGINNING_OF_TIME, Edge.END_OF_TIME);

    static Span of(LocalDate first, LocalDate last) {
        return new Span(Edge.of(first), Edge.of(last));
    }

    boolean overlaps(Span other) {
        return first.compareTo(other.last) <= 0 && other.first.compareTo(last) <= 0;
    }

    Span coveringAlso(Span other) {
        return new Span(
                first.compareTo(other.first) <= 0 ? first : other.first,
                last.compareTo(other.last) >= 0 ? last : other.last);
    }
}
