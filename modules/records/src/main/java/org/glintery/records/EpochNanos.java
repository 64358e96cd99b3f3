package org.glintery.records;

import java.time.Instant;

/** Instants as one long, exact from 1678 to 2262. */
final class EpochNanos {
    private static final long A_SECOND = 1_000_000_000L;
    private static final Instant FIRST = of(Long.MIN_VALUE);
    private static final Instant LAST = of(Long.MAX_VALUE);

    private EpochNanos() {}

    static boolean fits(Instant instant) {
        return !instant.isBefore(FIRST) && !instant.isAfter(LAST);
    }

    static long of(Instant instant) {
        return Math.addExact(Math.multiplyExact(instant.getEpochSecond(), A_SECOND), instant.getNano());
    }

    static Instant of(long nanos) {
        return Instant.ofEpochSecond(Math.floorDiv(nanos, A_SECOND), Math.floorMod(nanos, A_SECOND));
    }
}
