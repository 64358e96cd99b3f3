package org.glintery.stash;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction.Movement;
import org.glintery.api.ledger.LedgerAction.Stocktake;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.MoveRequest;
import org.glintery.api.storage.SpotNames;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.FoundDrills;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.Precondition;
import org.glintery.api.workshop.View;

/** Moves drills from spot to spot, and pins what was counted. Any thread. */
final class DrillMoves {

    private final View view;
    private final List<Operation> making;

    /** @param making done first, such as making a bag that is named for the first time */
    DrillMoves(View view, List<Operation> making) {
        this.view = view;
        this.making = making;
    }

    Result<ChangeSet> move(MoveRequest request) {
        Optional<Refusal> refusal = refusal(request);
        if (refusal.isPresent()) {
            return Result.refused(refusal.get());
        }
        Drill drill = request.drill();
        ChangeSet.Builder change = ChangeSet.named("Move " + drill.code() + " to " + words(request.to()))
                .addAll(making);
        new CardLearning(view).used(List.of(drill)).into(change);
        release(change, request);
        makeUp(change, request);
        if (request.from().equals(Spot.FOUND)) {
            long found = request.amount().count().orElse(0L);
            FoundDrills.add(change, view, request.to(), drill, found);
        }
        change.post(new Movement(
                UUID.randomUUID(),
                drill,
                request.lot(),
                request.from(),
                request.to(),
                request.amount(),
                request.reason(),
                request.happenedOn(),
                Optional.empty()));
        emptied(change, request);
        return Result.ok(change.build(), PocketWarnings.after(view, request));
    }

    Result<ChangeSet> stocktake(Spot spot, Drill drill, Amount amount, Optional<About> happenedOn) {
        if (spot.isBoundary()) {
            return Result.refused(
                    "not-a-place", "Only a bag, a pocket or a canvas can be counted. Nothing was changed.");
        }
        if (!amount.known()) {
            return Result.refused("no-amount", "A count needs a number, exact or rough. Nothing was changed.");
        }
        Optional<Refusal> gone = SpotCheck.refusal(view, spot);
        if (gone.isPresent()) {
            return Result.refused(gone.get());
        }
        ChangeSet.Builder change =
                ChangeSet.named("Count " + drill.code() + " in " + words(spot)).addAll(making);
        new CardLearning(view).used(List.of(drill)).into(change);
        if (spot.inTheHouse()) {
            FoundDrills.add(change, view, spot, drill, -FoundDrills.at(view, spot, drill));
        }
        change.post(new Stocktake(UUID.randomUUID(), drill, spot, amount, "counted", happenedOn, Optional.empty()));
        return Result.ok(change.build());
    }

    private Optional<Refusal> refusal(MoveRequest request) {
        if (request.amount().count().filter(count -> count == 0).isPresent()) {
            return refused("no-amount", "There is nothing to move: the amount is 0.");
        }
        if (request.from().equals(request.to())) {
            return refused("same-spot", "The drills are there already: " + words(request.to()) + ".");
        }
        if (request.from().isBoundary() && request.to().isBoundary()) {
            return refused("outside", "Nothing would come in or go out. Name a bag, a pocket or a canvas.");
        }
        return SpotCheck.refusal(view, request.from())
                .or(() -> SpotCheck.refusal(view, request.to()))
                .or(() -> notEnough(request));
    }

    private Optional<Refusal> notEnough(MoveRequest request) {
        if (request.from().isBoundary()) {
            return Optional.empty();
        }
        Balance there = view.balance(request.from(), request.drill());
        if (!request.amount().known()) {
            return there.uncounted() > 0
                    ? Optional.empty()
                    : refused(
                            "not-enough",
                            "Nothing uncounted of " + request.drill().code() + " is in " + words(request.from())
                                    + ". Say how many to move.");
        }
        long wanted = request.amount().count().orElseThrow();
        if (request.believed() || wanted <= there.count()) {
            return Optional.empty();
        }
        return refused(
                "not-enough",
                "There are " + there.words() + " of " + request.drill().code() + " in " + words(request.from())
                        + ", and " + wanted + " were asked for. Nothing was moved.");
    }

    /** What the piece has set aside becomes less by what goes onto its canvas. */
    private void release(ChangeSet.Builder change, MoveRequest request) {
        if (request.to() instanceof Spot.OnCanvas canvas && request.amount().known()) {
            PieceReservations reservations = new PieceReservations(view, canvas.piece());
            long left =
                    reservations.of(request.drill()) - request.amount().count().orElseThrow();
            reservations.set(change, request.drill(), Math.max(0, left));
        }
    }

    /** A person who takes more than is booked is believed: the rest was there, so it is found. */
    private void makeUp(ChangeSet.Builder change, MoveRequest request) {
        if (!request.believed()
                || request.from().isBoundary()
                || !request.amount().known()) {
            return;
        }
        Balance booked = view.balance(request.from(), request.drill());
        long shortfall = request.amount().count().orElseThrow() - booked.count();
        if (shortfall <= 0) {
            return;
        }
        change.require(new Precondition.BalanceAt(request.from(), request.drill(), booked));
        Spot flagged = request.to() instanceof Spot.OnCanvas ? request.to() : request.from();
        FoundDrills.add(change, view, flagged, request.drill(), shortfall);
        change.post(new Movement(
                UUID.randomUUID(),
                request.drill(),
                request.lot(),
                Spot.FOUND,
                request.from(),
                Amount.counted(shortfall),
                "found: " + request.amount().words() + " were taken where " + booked.words() + " were booked",
                request.happenedOn(),
                Optional.empty()));
    }

    /** Who takes all that is booked leaves nothing behind: what was unsure about it ends. */
    private void emptied(ChangeSet.Builder change, MoveRequest request) {
        Balance booked = view.balance(request.from(), request.drill());
        boolean all = request.from().inTheHouse()
                && booked.variance() > 0
                && booked.uncounted() == 0
                && request.amount()
                        .count()
                        .filter(count -> count >= booked.count())
                        .isPresent();
        if (all) {
            change.require(new Precondition.BalanceAt(request.from(), request.drill(), booked));
            change.post(new Stocktake(
                    UUID.randomUUID(),
                    request.drill(),
                    request.from(),
                    Amount.counted(0),
                    "emptied",
                    request.happenedOn(),
                    Optional.empty()));
        }
    }

    private String words(Spot spot) {
        return SpotNames.words(view, spot, making);
    }

    private static Optional<Refusal> refused(String code, String text) {
        return Optional.of(new Refusal(code, text));
    }
}
