package org.glintery.activework;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Reservation;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** The drills that are set aside for one piece and become fewer as they are laid. Any thread. */
final class SetAside {

    private final View view;
    private final UUID piece;

    SetAside(View view, UUID piece) {
        this.view = view;
        this.piece = piece;
    }

    /** @param laid drills that left the house; below 0 when some came back, which are then set aside again */
    void drawDown(ChangeSet.Builder change, Drill drill, long laid) {
        UUID id = Reservation.idForPiece(piece, drill);
        Optional<Stored<Reservation>> stored = view.find(Reservation.TYPE, id);
        long before = stored.map(r -> r.value().count()).orElse(0L);
        long left = Math.max(0, before - (laid < 0 ? -again(drill, -laid) : laid));
        if (left == before) {
            return;
        }
        if (left == 0) {
            change.remove(Reservation.TYPE.ref(id));
            return;
        }
        Reservation now = new Reservation(drill, left, Reservation.FOR_PIECE, piece, Optional.empty());
        stored.ifPresentOrElse(
                old -> change.replace(Reservation.TYPE, old, now), () -> change.create(Reservation.TYPE, id, now));
    }

    /** After a loss more may be set aside for others than the house holds: then not all that came back is free. */
    private long again(Drill drill, long back) {
        return Math.max(0, Math.min(back, view.available(drill) + back));
    }
}
