package org.glintery.api.time;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.IntFunction;

/** Which year is meant when it is not said, or only its last two digits are. */
final class Years {

    /** 29 February recurs within this many years. */
    private static final int FAR_ENOUGH = 8;

    private Years() {}

    /** The year of the last hundred, up to this one, that ends so. */
    static int fromTwoDigits(int digits, LocalDate today) {
        int thisCentury = today.getYear() - today.getYear() % 100 + digits;
        return thisCentury > today.getYear() ? thisCentury - 100 : thisCentury;
    }

    /** The latest of the yearly occurrences that has begun by today; empty ones (no such day that year) are skipped. */
    static <T extends Edtf> Optional<T> latestBegun(IntFunction<Optional<T>> occurrence, LocalDate today) {
        for (int year = today.getYear(); year >= today.getYear() - FAR_ENOUGH; year--) {
            Optional<T> found = occurrence.apply(year);
            if (found.isPresent() && found.get().span().first().compareTo(Edge.of(today)) <= 0) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** The latest of the yearly occurrences that was over before today. */
    static <T extends Edtf> Optional<T> latestOver(IntFunction<Optional<T>> occurrence, LocalDate today) {
        for (int year = today.getYear(); year >= today.getYear() - FAR_ENOUGH; year--) {
            Optional<T> found = occurrence.apply(year);
            if (found.isPresent() && found.get().span().last().compareTo(Edge.of(today)) < 0) {
                return found;
            }
        }
        return Optional.empty();
    }
}
