package org.glintery.stash.posting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction.Movement;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.FoundDrills;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.glintery.stash.PieceReservations;
import org.openide.util.NbBundle.Messages;

/**
 * Books movements, all or none. What goes onto a piece's canvas is no longer set aside for it; saying a movement again, alone
 * or among others, releases nothing twice. What comes from {@code found} is flagged where it went. One thread.
 */
final class MovementBooking {

    private final Workshop workshop;
    private final KnownPlaces places = new KnownPlaces();

    MovementBooking(Workshop workshop) {
        this.workshop = workshop;
    }

    /** @return the movement that is to blame with the refusal, where one is */
    Outcome book(List<PostedLine> lines) {
        View view = workshop.view();
        String sentence = sentence(lines);
        ChangeSet.Builder movements = ChangeSet.named(sentence);
        List<Movement> telling = new ArrayList<>();
        for (PostedLine line : lines) {
            Result<Movement> movement = movement(view, line);
            if (movement instanceof Result.Refused<Movement> no) {
                places.forget();
                return new Outcome(Optional.of(no.refusal()), Optional.of(line));
            }
            Movement booked = ((Result.Ok<Movement>) movement).value();
            movements.post(booked);
            if (isLaid(booked) || isFound(booked)) {
                telling.add(booked);
            }
        }
        Result<Applied> applied = apply(view, sentence, movements, saidFirst(telling));
        if (applied instanceof Result.Refused<Applied> no) {
            places.forget();
            return new Outcome(Optional.of(no.refusal()), Optional.empty());
        }
        places.keep();
        return new Outcome(Optional.empty(), Optional.empty());
    }

    private static boolean isLaid(Movement movement) {
        return movement.to() instanceof Spot.OnCanvas;
    }

    private static boolean isFound(Movement movement) {
        return movement.from().equals(Spot.FOUND) && !movement.to().isBoundary();
    }

    /** The workshop is asked once for all of them: each question waits for its writer. */
    private List<Movement> saidFirst(List<Movement> movements) {
        if (movements.isEmpty()) {
            return movements;
        }
        Set<UUID> known = new HashSet<>(
                workshop.booked(movements.stream().map(Movement::id).toList()));
        return movements.stream().filter(movement -> known.add(movement.id())).toList();
    }

    private Result<Movement> movement(View view, PostedLine line) {
        return places.spot(view, line.from())
                .then(from -> places.spot(view, line.to()).then(to -> {
                    places.use(view, line.drill());
                    return Result.ok(new Movement(
                            line.id(),
                            line.drill(),
                            line.lot(),
                            from,
                            to,
                            line.amount(),
                            line.reason(),
                            line.happenedOn(),
                            Optional.empty()));
                }));
    }

    private Result<Applied> apply(View view, String sentence, ChangeSet.Builder movements, List<Movement> telling) {
        Map<ForPiece, Long> laid = new LinkedHashMap<>();
        Map<At, Long> found = new LinkedHashMap<>();
        for (Movement movement : telling) {
            long count = movement.amount().count().orElse(0L);
            if (movement.to() instanceof Spot.OnCanvas canvas) {
                laid.merge(new ForPiece(canvas.piece(), movement.drill()), count, Long::sum);
            }
            if (isFound(movement)) {
                found.merge(new At(movement.to(), movement.drill()), count, Long::sum);
            }
        }
        ChangeSet.Builder making = ChangeSet.named(sentence);
        places.makeIn(making, view);
        ChangeSet booked = making.build().join(movements.build());
        ChangeSet.Builder flagging = ChangeSet.named(sentence);
        found.forEach((at, count) -> FoundDrills.add(flagging, view, at.spot(), at.drill(), count));
        ChangeSet.Builder releasing = ChangeSet.named(sentence);
        laid.forEach((what, count) -> {
            PieceReservations reservations = new PieceReservations(view, what.piece());
            reservations.set(releasing, what.drill(), Math.max(0, reservations.of(what.drill()) - count));
        });
        return workshop.apply(releasing.build().join(booked).join(flagging.build()));
    }

    @Messages({
        "# {0} - code",
        "MovementBooking.one=Book {0}",
        "# {0} - how many",
        "MovementBooking.several=Book {0} movements"
    })
    private static String sentence(List<PostedLine> lines) {
        return lines.size() == 1
                ? Bundle.MovementBooking_one(lines.get(0).drill().code())
                : Bundle.MovementBooking_several(Balance.grouped(lines.size()));
    }

    private record At(Spot spot, Drill drill) {}

    private record ForPiece(UUID piece, Drill drill) {}

    /** @param refusal empty when it is booked */
    record Outcome(Optional<Refusal> refusal, Optional<PostedLine> blame) {}
}
