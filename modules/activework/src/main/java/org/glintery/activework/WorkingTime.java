package org.glintery.activework;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Optional;
import org.glintery.api.activework.RunningSitting;

/**
 * A running sitting in moments of the time line, so that a change of the clocks in its midst neither adds nor takes an
 * hour. Pure; any thread.
 *
 * @param zone where it was begun; a fixed offset where the region's local time would mean two moments
 */
public record WorkingTime(Instant start, Optional<Instant> pausedSince, int pausedMinutes, ZoneId zone) {

    private static final int SECONDS_A_MINUTE = 60;

    static WorkingTime beginning(ZonedDateTime now) {
        return new WorkingTime(now.toInstant(), Optional.empty(), 0, now.getZone());
    }

    public static WorkingTime of(RunningSitting running) {
        ZoneId zone = ZoneId.of(running.zone());
        return new WorkingTime(
                running.startedAt().atZone(zone).toInstant(),
                running.pausedSince().map(since -> since.atZone(zone).toInstant()),
                running.pausedMinutes(),
                zone);
    }

    /** As it is kept. In the hour that the clocks go through twice, local time is kept at the offset it was meant at. */
    RunningSitting kept() {
        ZoneId clear = isClear(start) && pausedSince.map(this::isClear).orElse(true)
                ? zone
                : zone.getRules().getOffset(pausedSince.orElse(start));
        return new RunningSitting(
                LocalDateTime.ofInstant(start, clear),
                clear.getId(),
                pausedSince.map(since -> LocalDateTime.ofInstant(since, clear)),
                pausedMinutes);
    }

    private boolean isClear(Instant moment) {
        return LocalDateTime.ofInstant(moment, zone).atZone(zone).toInstant().equals(moment);
    }

    WorkingTime paused(Instant now) {
        return new WorkingTime(start, Optional.of(now), pausedMinutes, zone);
    }

    WorkingTime resumed(Instant now) {
        return new WorkingTime(start, Optional.empty(), pausedMinutesUntil(now), zone);
    }

    /** With the pause that goes on. */
    public int pausedMinutesUntil(Instant now) {
        return pausedMinutes + pausedSince.map(since -> minutes(since, now)).orElse(0);
    }

    /** Worked until then, pauses left out; a clock that was set back gives 0. */
    public int workedMinutesUntil(Instant now) {
        return Math.max(0, minutes(start, now) - pausedMinutesUntil(now));
    }

    private static int minutes(Instant from, Instant to) {
        long seconds = Math.max(0, Duration.between(from, to).toSeconds());
        return Math.toIntExact((seconds + SECONDS_A_MINUTE / 2) / SECONDS_A_MINUTE);
    }
}
