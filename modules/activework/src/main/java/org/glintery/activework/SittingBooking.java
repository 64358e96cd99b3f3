package org.glintery.activework;

import java.util.List;
import java.util.UUID;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.Stored;

/**
 * What a sitting booked of the drills it names, so that a correction can take back just that. The document has the
 * sitting's id.
 *
 * @param putAs the version it was put as: when it stands under another one, the sitting was undone and brought back, and
 *     its movements with it
 * @param released what the sitting took off the drills that were set aside for its piece
 */
public record SittingBooking(int putAs, List<Step> steps, List<Released> released) {

    static final DocumentType<SittingBooking> TYPE =
            DocumentType.of("activework", "sitting-booking", SittingBooking.class);

    public SittingBooking {
        steps = List.copyOf(steps);
        released = List.copyOf(released);
    }

    /**
     * So many drills of a symbol that went onto the canvas.
     *
     * @param movement the id of the ledger's movement
     */
    public record Step(UUID movement, String symbol, Drill drill, Spot from, long count) {}

    /** So many of a drill that were set aside no longer. */
    public record Released(Drill drill, long count) {}

    /** Whether the movements are still the last that was booked: a movement can be reversed only once. */
    static boolean isAsPut(Stored<SittingBooking> stored) {
        return stored.version() == stored.value().putAs();
    }

    long booked(String symbol) {
        return steps.stream()
                .filter(step -> step.symbol().equals(symbol))
                .mapToLong(Step::count)
                .sum();
    }
}
