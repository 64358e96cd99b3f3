package org.glintery.stash;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Drill;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Derived;
import org.glintery.api.workshop.Reservation;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** The drills that are set aside for one piece. Any thread. */
public final class PieceReservations {
    private static final Derived<Map<UUID, List<Stored<Reservation>>>> BY_PIECE = PieceReservations::byPiece;

    private final View view;
    private final UUID piece;

    public PieceReservations(View view, UUID piece) {
        this.view = view;
        this.piece = piece;
    }

    public long of(Drill drill) {
        return stored(drill).map(r -> r.value().count()).orElse(0L);
    }

    /** Sets so many aside from now on; none ends the reservation. */
    public void set(ChangeSet.Builder change, Drill drill, long count) {
        Optional<Stored<Reservation>> old = stored(drill);
        if (count > 0) {
            UUID id = Reservation.idForPiece(piece, drill);
            Reservation now = new Reservation(drill, count, Reservation.FOR_PIECE, piece, Optional.empty());
            if (old.isPresent()) {
                change.replace(Reservation.TYPE, old.get(), now);
            } else {
                change.create(Reservation.TYPE, id, now);
            }
        } else if (old.isPresent()) {
            change.remove(Reservation.TYPE.ref(old.get().id()));
        }
    }

    /** Ends all of the piece's reservations. */
    public void release(ChangeSet.Builder change) {
        for (Stored<Reservation> one : all()) {
            change.remove(Reservation.TYPE.ref(one.id()));
        }
    }

    private Optional<Stored<Reservation>> stored(Drill drill) {
        return view.find(Reservation.TYPE, Reservation.idForPiece(piece, drill));
    }

    private List<Stored<Reservation>> all() {
        return view.derived(BY_PIECE).getOrDefault(piece, List.of());
    }

    private static Map<UUID, List<Stored<Reservation>>> byPiece(View view) {
        Map<UUID, List<Stored<Reservation>>> index = new HashMap<>();
        for (Stored<Reservation> one : view.all(Reservation.TYPE)) {
            if (one.value().purpose().equals(Reservation.FOR_PIECE)) {
                index.computeIfAbsent(one.value().forId(), id -> new ArrayList<>())
                        .add(one);
            }
        }
        return index;
    }
}
