package org.glintery.stash;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.glintery.api.Refusal;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.MoveRequest;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.Reservation;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/**
 * What is said when less of a drill would be left than is set aside: a loss is a fact and only warned of, anything else is
 * refused. Pure.
 */
@Messages({
    "# {0} - how many",
    "# {1} - how many in words",
    "# {2} - code",
    "# {3} - pieces",
    "# {4} - how many too few, in words",
    "SetAsideDrills.lost={0,choice,1#{1} is|1<{1} are} set aside of {2} for {3}; {4} short now.",
    "# {0} - how many",
    "# {1} - how many in words",
    "# {2} - code",
    "# {3} - pieces",
    "# {4} - how many too few, in words",
    "SetAsideDrills.refused={0,choice,1#{1} is|1<{1} are} set aside of {2} for {3}, and {4} too few would be left. Nothing was "
            + "moved. Complete {3} or let it go first.",
    "SetAsideDrills.other=other work"
})
final class SetAsideDrills {

    private SetAsideDrills() {}

    static Optional<Refusal> refusal(View view, MoveRequest request) {
        if (!leaves(request) || isLoss(request.to())) {
            return Optional.empty();
        }
        Drill drill = request.drill();
        long own = request.to() instanceof Spot.OnCanvas canvas
                ? new PieceReservations(view, canvas.piece()).of(drill)
                : 0;
        long taken = taken(view, request);
        long tooFew = taken - view.available(drill) - Math.min(own, taken);
        long setAside = view.reserved(drill) - Math.min(own, taken);
        return tooFew > 0 && setAside > 0
                ? Optional.of(new Refusal("reserved", refused(view, drill, setAside, tooFew)))
                : Optional.empty();
    }

    private static String refused(View view, Drill drill, long setAside, long tooFew) {
        return Bundle.SetAsideDrills_refused(
                setAside, Balance.grouped(setAside), drill.code(), pieces(view, drill), Balance.grouped(tooFew));
    }

    /** What a move to {@code lost} is warned of. */
    static List<String> afterLoss(View view, MoveRequest request) {
        return leaves(request) && isLoss(request.to())
                ? shortAfter(view, request.drill(), taken(view, request))
                : List.of();
    }

    /** What a count that found fewer is warned of. */
    static List<String> afterCount(View view, Spot spot, Drill drill, Amount counted) {
        long lost = view.balance(spot, drill).count() - counted.count().orElse(0L);
        return spot.inTheHouse() && lost > 0 ? shortAfter(view, drill, lost) : List.of();
    }

    private static List<String> shortAfter(View view, Drill drill, long lost) {
        long setAside = view.reserved(drill);
        long tooFew = lost - view.available(drill);
        return tooFew > 0 && setAside > 0
                ? List.of(Bundle.SetAsideDrills_lost(
                        setAside,
                        Balance.grouped(setAside),
                        drill.code(),
                        pieces(view, drill),
                        Balance.grouped(tooFew)))
                : List.of();
    }

    /** The pieces that a drill is set aside for. */
    private static String pieces(View view, Drill drill) {
        String named = view.all(Reservation.TYPE).stream()
                .map(Stored::value)
                .filter(one -> one.drill().equals(drill) && one.purpose().equals(Reservation.FOR_PIECE))
                .sorted(Comparator.comparingLong(Reservation::count).reversed())
                .flatMap(one -> view.find(Piece.TYPE, one.forId()).stream())
                .map(piece -> piece.value().title())
                .collect(Collectors.joining(", "));
        return named.isEmpty() ? Bundle.SetAsideDrills_other() : named;
    }

    /** What is beyond the booked was found in the same change: the house loses only what it was known to hold. */
    private static long taken(View view, MoveRequest request) {
        long booked = view.balance(request.from(), request.drill()).count();
        return Math.min(booked, request.amount().count().orElse(0L));
    }

    private static boolean leaves(MoveRequest request) {
        return request.from().inTheHouse() && !request.to().inTheHouse();
    }

    private static boolean isLoss(Spot to) {
        return to instanceof Spot.Boundary boundary && boundary.edge() == Spot.Edge.LOST;
    }
}
