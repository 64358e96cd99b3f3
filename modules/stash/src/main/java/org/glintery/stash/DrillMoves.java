package org.glintery.stash;

import java.util.ArrayList;
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
import org.openide.util.NbBundle.Messages;

/** Moves drills from spot to spot, and pins what was counted. Any thread. */
final class DrillMoves {

    private final View view;
    private final List<Operation> making;

    /** @param making done first, such as making a bag that is named for the first time */
    DrillMoves(View view, List<Operation> making) {
        this.view = view;
        this.making = making;
    }

    @Messages({"# {0} - code", "# {1} - where to", "DrillMoves.move=Move {0} to {1}"})
    Result<ChangeSet> move(MoveRequest request) {
        Optional<Refusal> refusal = new MoveCheck(view, making).refusal(request);
        if (refusal.isPresent()) {
            return Result.refused(refusal.get());
        }
        Drill drill = request.drill();
        ChangeSet.Builder change = ChangeSet.named(Bundle.DrillMoves_move(drill.code(), words(request.to())))
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
        List<String> warnings = new ArrayList<>(PocketWarnings.after(view, request));
        warnings.addAll(SetAsideDrills.afterLoss(view, request));
        return Result.ok(change.build(), warnings);
    }

    @Messages({
        "DrillMoves.noPlace=Only a bag, a pocket or a canvas can be counted. Nothing was changed.",
        "DrillMoves.noNumber=A count needs a number, exact or rough. Nothing was changed.",
        "# {0} - code",
        "# {1} - where",
        "DrillMoves.count=Count {0} in {1}",
        "DrillMoves.counted=counted"
    })
    Result<ChangeSet> stocktake(Spot spot, Drill drill, Amount amount, Optional<About> happenedOn) {
        if (spot.isBoundary()) {
            return Result.refused("not-a-place", Bundle.DrillMoves_noPlace());
        }
        if (!amount.known()) {
            return Result.refused("no-amount", Bundle.DrillMoves_noNumber());
        }
        Optional<Refusal> gone = SpotCheck.refusal(view, spot);
        if (gone.isPresent()) {
            return Result.refused(gone.get());
        }
        ChangeSet.Builder change = ChangeSet.named(Bundle.DrillMoves_count(drill.code(), words(spot)))
                .addAll(making);
        new CardLearning(view).used(List.of(drill)).into(change);
        if (spot.inTheHouse()) {
            FoundDrills.add(change, view, spot, drill, -FoundDrills.at(view, spot, drill));
        }
        change.post(new Stocktake(
                UUID.randomUUID(), drill, spot, amount, Bundle.DrillMoves_counted(), happenedOn, Optional.empty()));
        return Result.ok(change.build(), SetAsideDrills.afterCount(view, spot, drill, amount));
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
                foundReason(request.amount(), booked),
                request.happenedOn(),
                Optional.empty()));
    }

    @Messages({
        "# {0} - how many",
        "# {1} - how many in words",
        "# {2} - booked",
        "# {3} - booked in words",
        "DrillMoves.found=found: {0,choice,1#{1} was|1<{1} were} taken where {2,choice,0#{3} were|1#{3} was|1<{3} were} booked",
        "# {0} - how many",
        "# {1} - how many in words",
        "DrillMoves.foundUncounted=found: {0,choice,1#{1} was|1<{1} were} taken from drills that were not counted"
    })
    private static String foundReason(Amount taken, Balance booked) {
        long count = taken.count().orElseThrow();
        return booked.count() == 0 && booked.uncounted() > 0
                ? Bundle.DrillMoves_foundUncounted(count, taken.words())
                : Bundle.DrillMoves_found(count, taken.words(), booked.count(), booked.words());
    }

    /** Who takes all that is booked leaves nothing behind: what was unsure about it ends. */
    @Messages("DrillMoves.emptied=emptied")
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
                    Bundle.DrillMoves_emptied(),
                    request.happenedOn(),
                    Optional.empty()));
        }
    }

    private String words(Spot spot) {
        return SpotNames.words(view, spot, making);
    }
}
