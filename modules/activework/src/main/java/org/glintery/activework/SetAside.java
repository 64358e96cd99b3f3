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

    /** @param laid below 0 when drills came back: then they are set aside again, where some still are */
    void drawDown(ChangeSet.Builder change, Drill drill, long laid) {
        Optional<Stored<Reservation>> stored =
                view.find(Reservation.TYPE, Reservation.idForPiece(piece, drill));
        if (stored.isEmpty() || laid == 0) {
            return;
        }
        long left = stored.get().value().count() - laid;
        if (left > 0) {
            Reservation now = new Reservation(drill, left, Reservation.FOR_PIECE, piece, Optional.empty());
            change.replace(Reservation.TYPE, stored.get(), now);
        } else {
            change.remove(Reservation.TYPE.ref(stored.get().id()));
        }
    }
}
