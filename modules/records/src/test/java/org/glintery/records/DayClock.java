package org.glintery.records;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that a test moves on by days. */
final class DayClock extends Clock {
    private volatile Instant now = Instant.parse("2026-03-01T10:00:00Z");

    void nextDay() {
        now = now.plus(Duration.ofDays(1));
    }

    LocalDate day() {
        return LocalDate.now(this);
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException("this clock has one zone");
    }

    @Override
    public Instant instant() {
        return now;
    }
}
