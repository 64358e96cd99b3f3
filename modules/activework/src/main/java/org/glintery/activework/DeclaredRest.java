package org.glintery.activework;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.glintery.api.activework.Sitting;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;

/**
 * The days on which a piece rested because its maker said so: they are not idle days. A piece tells since when it stands
 * as it does, so this knows of the rest that lasts and of the last one that ended, but of none before. Any thread.
 *
 * @param from the first day of rest
 * @param until the day on which work went on; empty while it rests
 */
record DeclaredRest(LocalDate from, Optional<LocalDate> until) {

    static Optional<DeclaredRest> of(Piece piece, List<Sitting> sittings) {
        Optional<LocalDate> since = piece.standingSince().flatMap(DeclaredRest::exactDay);
        if (piece.standing() == Standing.RESTING) {
            return since.map(day -> new DeclaredRest(day, Optional.empty()));
        }
        if (piece.standing() != Standing.ON_THE_BENCH || since.isEmpty()) {
            return Optional.empty();
        }
        // a piece that came onto the bench after it was sat at had been put aside in between
        return sittings.stream()
                .flatMap(sitting -> exactDay(sitting.day()).stream())
                .filter(day -> day.isBefore(since.get()))
                .max(LocalDate::compareTo)
                .map(last -> new DeclaredRest(last.plusDays(1), since));
    }

    boolean has(LocalDate day) {
        return !day.isBefore(from) && until.map(day::isBefore).orElse(true);
    }

    static Optional<LocalDate> exactDay(About day) {
        return day.earliest().filter(first -> day.equals(About.on(first)));
    }
}
