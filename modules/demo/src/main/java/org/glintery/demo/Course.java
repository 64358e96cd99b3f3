package org.glintery.demo;

import java.time.LocalDate;
import org.glintery.api.stash.Standing;

/**
 * When a piece went through the workshop; what never happened has the day on which the demo stands still.
 *
 * @param started the first evening at it
 * @param last the last evening so far
 */
record Course(LocalDate arrived, LocalDate started, LocalDate last) {

    /** The relay and whatever else was on the bench first began seven months before the demo's day. */
    static Course of(PieceInMaking piece, Seeded seeded) {
        LocalDate today = DemoFilling.TODAY;
        Told told = piece.told();
        if (told.standing() == Standing.MADE) {
            LocalDate last = MadePieces.finishedOn(piece.made());
            return new Course(last.minusDays(80), last.minusDays(58), last);
        }
        if (told.title().equals(Told.RELAY)) {
            return new Course(today.minusMonths(7).minusDays(12), today.minusMonths(7), today.minusDays(1));
        }
        return switch (told.standing()) {
            case ON_THE_BENCH -> {
                LocalDate started = today.minusDays(seeded.between(44, 90));
                yield new Course(started.minusDays(30), started, today.minusDays(seeded.between(1, 4)));
            }
            case RESTING -> {
                LocalDate last = today.minusDays(seeded.between(48, 70));
                yield new Course(last.minusDays(110), last.minusDays(60), last);
            }
            default -> new Course(today.minusDays(seeded.between(20, 300)), today, today);
        };
    }
}
