package org.glintery.activework;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Drill;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Reservation;
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

    /**
     * @param restored what an earlier telling had released and is set aside again first
     * @param laid drills that were laid now
     * @param back drills that came back into the house, less those that left it: below 0 when more left
     * @return how many are set aside no longer because of those that were laid now
     */
    long drawDown(ChangeSet.Builder change, Drill drill, long restored, long laid, long back) {
        UUID id = Reservation.idForPiece(piece, drill);
        Optional<Stored<Reservation>> stored = view.find(Reservation.TYPE, id);
        long before = stored.map(r -> r.value().count()).orElse(0L);
        long full = before + restored;
        // after a loss more may be set aside for others than the house holds: then not all that came back is free
        long free = before + Math.max(0, view.available(drill) + back);
        long left = Math.min(Math.max(0, full - laid), free);
        if (left > 0 && left != before) {
            Reservation now = new Reservation(drill, left, Reservation.FOR_PIECE, piece, Optional.empty());
            stored.ifPresentOrElse(
                    old -> change.replace(Reservation.TYPE, old, now), () -> change.create(Reservation.TYPE, id, now));
        } else if (left == 0 && stored.isPresent()) {
            change.remove(Reservation.TYPE.ref(id));
        }
        return Math.min(laid, full);
    }
}
