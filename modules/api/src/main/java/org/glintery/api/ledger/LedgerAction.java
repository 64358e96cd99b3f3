package org.glintery.api.ledger;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;
import org.glintery.api.time.About;

/**
 * What someone asks the ledger to book. Each has an id made by its caller: said again with the same content
 * it counts once, with other content it is refused. {@code recordedAt} is filled by the workshop unless an
 * import brings it.
 */
@Stable
public sealed interface LedgerAction {
    UUID id();

    String reason();

    Optional<About> happenedOn();

    Optional<Instant> recordedAt();

    /**
     * An amount of one drill goes from one spot to another. An unknown amount may come from a boundary, or
     * from a spot that holds an uncounted amount, which then moves as a whole.
     *
     * @param lot the batch, where known
     */
    record Movement(
            UUID id,
            Drill drill,
            Optional<String> lot,
            Spot from,
            Spot to,
            Amount amount,
            String reason,
            Optional<About> happenedOn,
            Optional<Instant> recordedAt)
            implements LedgerAction {
        public Movement {
            lot = PlainText.line(lot);
            reason = PlainText.line(reason);
        }

        public static Movement of(UUID id, Drill drill, Spot from, Spot to, Amount amount, String reason) {
            return new Movement(
                    id, drill, Optional.empty(), from, to, amount, reason, Optional.empty(), Optional.empty());
        }
    }

    /** Takes back one earlier action. An action is reversed at most once; a reversal can be reversed. */
    record Reversal(UUID id, UUID reverses, String reason, Optional<About> happenedOn, Optional<Instant> recordedAt)
            implements LedgerAction {
        public Reversal {
            reason = PlainText.line(reason);
        }
    }

    /**
     * Pins what lies in a bag, a pocket or on a canvas; the difference is booked to or from {@code lost} and
     * {@code found}, and earlier uncertainty ends.
     */
    record Stocktake(
            UUID id,
            Drill drill,
            Spot spot,
            Amount amount,
            String reason,
            Optional<About> happenedOn,
            Optional<Instant> recordedAt)
            implements LedgerAction {
        public Stocktake {
            reason = PlainText.line(reason);
        }
    }
}
