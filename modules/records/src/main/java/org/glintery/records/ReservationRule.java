package org.glintery.records;

import java.time.LocalDate;
import java.util.Optional;
import org.glintery.api.Refusal;
import org.glintery.api.ledger.Drill;

/**
 * Checked once at the end of a change, so that the order of its steps does not matter. With less at hand
 * than is set aside, a change may not set aside more, and may not take more out of the house than it
 * releases. A shortage that a loss brought is left alone.
 */
final class ReservationRule {
    private final NumberedNames<Drill> drills;

    ReservationRule(NumberedNames<Drill> drills) {
        this.drills = drills;
    }

    Optional<Refusal> check(Draft draft, LocalDate day) {
        return draft.flow().touched().stream()
                .sorted()
                .map(drill -> check(drill, draft, day))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<Refusal> check(int drill, Draft draft, LocalDate day) {
        long reserved = draft.reserved().reserved(drill, day);
        long missing = reserved - draft.balances().house(drill);
        if (missing <= 0) {
            return Optional.empty();
        }
        long more = reserved - draft.base().reserved().reserved(drill, day);
        if (more > 0) {
            return Optional.of(Refusals.notAvailable(drills.value(drill), missing));
        }
        return draft.flow().net(drill) < more
                ? Optional.of(Refusals.reserved(drills.value(drill), missing))
                : Optional.empty();
    }
}
