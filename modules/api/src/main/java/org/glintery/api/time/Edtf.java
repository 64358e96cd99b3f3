package org.glintery.api.time;

/**
 * One expression of the Extended Date/Time Format: ISO 8601-2:2019 as the Library of Congress specification of
 * 2019-02-04 profiles it. Immutable.
 */
sealed interface Edtf permits EdtfDate, EdtfSeason, EdtfYear, EdtfMoment, EdtfInterval, EdtfRange, EdtfSet, OpenEnd {

    Span span();

    /** The canonical text, which parses to an equal expression. */
    String text();

    /** Plain English, fit to stand in a sentence. */
    String words();

    /** Finer than the span where there are gaps: a set of two years does not overlap what lies between. */
    default boolean overlaps(Span other) {
        return span().overlaps(other);
    }

    /** Whether some digits were left open, so that the last day may be meant as well as the first. */
    default boolean leavesDigitsOpen() {
        return false;
    }

    /** The same, doubted as well; what the format cannot doubt stays as it is. */
    default Edtf doubted(Doubt doubt) {
        return this;
    }

    /**
     * Whether one can stand before the other in an interval. The starts are compared, so a month does not end what began
     * within it; an end with open digits may be any of its days.
     */
    static boolean inOrder(Edtf start, Edtf end) {
        Edge latestStartOfEnd =
                end.leavesDigitsOpen() ? end.span().last() : end.span().first();
        return start.span().first().compareTo(latestStartOfEnd) <= 0;
    }
}
