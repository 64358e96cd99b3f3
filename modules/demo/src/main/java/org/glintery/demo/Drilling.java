package org.glintery.demo;

import java.time.LocalDate;
import java.util.Optional;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Reservation;

/** What the services book when a kit comes, is kitted up, is made and is kitted down. */
final class Drilling {
    private static final int DAYS_TO_KIT_UP = 3;

    private final ChangeSet.Builder change;
    private final Booking booking;
    private final Cases cases;
    private final Leftovers leftovers;

    Drilling(ChangeSet.Builder change, Booking booking, Cases cases) {
        this.change = change;
        this.booking = booking;
        this.cases = cases;
        this.leftovers = new Leftovers(booking, cases);
    }

    void book(PieceInMaking piece, LocalDate arrived) {
        if (piece.legend().isEmpty() || !piece.told().arrived()) {
            return;
        }
        Spot bag = booking.kitBag(piece);
        Spot supplier = new Spot.Boundary(Spot.Edge.SUPPLIER, Optional.of(piece.source()));
        for (int line = 0; line < piece.legend().size(); line++) {
            Amount came = piece.supplied(line);
            String reason = "came with " + piece.told().title() + (came.known() ? "" : ", not counted yet");
            booking.move(piece.drill(line), supplier, bag, came, reason, arrived);
        }
        if (!piece.told().made()) {
            setAside(piece);
        }
        KittedUp kittedUp = piece.told().inCase() > 0
                ? KittedUp.into(cases, piece, bag)
                : KittedUp.leftIn(bag, piece.legend().size());
        if (piece.told().inCase() > 0) {
            kittedUp.book(change, booking, cases, piece, bag, arrived.plusDays(DAYS_TO_KIT_UP));
        }
        if (piece.told().made()) {
            lay(piece, kittedUp, bag);
        }
    }

    private void setAside(PieceInMaking piece) {
        for (int line = 0; line < piece.legend().size(); line++) {
            var drill = piece.drill(line);
            piece.supplied(line)
                    .count()
                    .ifPresent(count -> change.create(
                            Reservation.TYPE,
                            Reservation.idForPiece(piece.id(), drill),
                            new Reservation(drill, count, Reservation.FOR_PIECE, piece.id(), Optional.empty())));
        }
    }

    /** Onto the canvas what the chart needs; what is left over is sorted, unless its case still waits to be cleared. */
    private void lay(PieceInMaking piece, KittedUp kittedUp, Spot bag) {
        LocalDate on = Calendar.finishedOn(piece.made());
        Spot canvas = new Spot.OnCanvas(piece.id());
        for (int line = 0; line < piece.legend().size(); line++) {
            long left = piece.needed(line);
            for (KittedUp.Heap heap : kittedUp.heaps(line)) {
                long taken = Math.min(left, heap.count());
                booking.move(
                        piece.drill(line),
                        heap.spot(),
                        canvas,
                        taken,
                        "laid on " + piece.told().title(),
                        on);
                left -= taken;
            }
        }
        if (piece.told().inCase() == 0) {
            leftovers.sort(piece, bag, on.plusDays(1));
        }
    }
}
