package org.glintery.api.workshop;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;

/**
 * Drills set aside. A document like any other, but the workshop checks it in the change that brings it: a
 * reservation of more than is available is refused, and so is a movement out of the house that would leave
 * less in bags and pockets than is reserved, unless the same change releases it or the drills went to
 * {@code lost} (a loss is a fact).
 *
 * @param purpose what for, such as {@code piece}
 * @param forId which piece, offer or round
 * @param expires the last day it counts; none when it stands until released
 */
@Stable
public record Reservation(Drill drill, long count, String purpose, UUID forId, Optional<LocalDate> expires) {
    public static final DocumentType<Reservation> TYPE = DocumentType.of("ledger", "reservation", Reservation.class);

    public static final String FOR_PIECE = "piece";

    public Reservation {
        purpose = PlainText.line(purpose);
        if (count <= 0 || count > Amount.MOST) {
            throw new IllegalArgumentException("count out of range: " + count);
        }
    }

    /** The id of what is set aside of a drill for a piece: one document for both. It follows from {@link Drill#key}. */
    public static UUID idForPiece(UUID piece, Drill drill) {
        return ByName.idFor(TYPE, FOR_PIECE + "/" + piece + "/" + drill.key());
    }
}
