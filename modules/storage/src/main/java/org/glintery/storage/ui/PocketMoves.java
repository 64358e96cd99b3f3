package org.glintery.storage.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.MoveRequest;
import org.glintery.api.stash.Stash;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.SpotNames;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Moves all that lies in one place to another, with the symbols that have their place there. Any thread. */
final class PocketMoves {

    private final Stash stash;

    PocketMoves(Stash stash) {
        this.stash = stash;
    }

    @Messages({
        "PocketMoves.reason=moved in the cabinet",
        "# {0} - where it lies",
        "# {1} - where it goes",
        "PocketMoves.change=Move what is in {0} to {1}",
        "PocketMoves.nothing=Nothing lies there, so nothing was moved."
    })
    Result<ChangeSet> move(View view, Spot from, Spot to) {
        Map<Drill, Balance> contents = view.contents(from);
        if (contents.isEmpty()) {
            return Result.refused("nothing-there", Bundle.PocketMoves_nothing());
        }
        ChangeSet.Builder seats =
                ChangeSet.named(Bundle.PocketMoves_change(SpotNames.words(view, from), SpotNames.words(view, to)));
        takeSeatsAlong(view, seats, from, to);
        Result<ChangeSet> all = Result.ok(seats.build());
        for (Map.Entry<Drill, Balance> content : contents.entrySet()) {
            for (Result<ChangeSet> step : steps(view, content.getKey(), content.getValue(), from, to)) {
                all = all.then(sofar -> step.then(next -> Result.ok(sofar.join(next))));
            }
        }
        return all;
    }

    private List<Result<ChangeSet>> steps(View view, Drill drill, Balance there, Spot from, Spot to) {
        List<Result<ChangeSet>> steps = new ArrayList<>();
        if (there.count() > 0) {
            Amount amount = there.uncertainty() == 0
                    ? Amount.counted(there.count())
                    : Amount.rough(there.count(), there.uncertainty());
            steps.add(stash.move(view, request(drill, from, to, amount)));
        }
        if (there.uncounted() > 0) {
            steps.add(stash.move(view, request(drill, from, to, Amount.unknown())));
        }
        if (there.variance() > 0) {
            // the place is empty then, and known to be
            steps.add(stash.stocktake(view, from, drill, Amount.counted(0), Optional.empty()));
        }
        return steps;
    }

    private static MoveRequest request(Drill drill, Spot from, Spot to, Amount amount) {
        return new MoveRequest(
                drill, Optional.empty(), from, to, amount, Bundle.PocketMoves_reason(), Optional.empty(), true);
    }

    private static void takeSeatsAlong(View view, ChangeSet.Builder change, Spot from, Spot to) {
        view.all(KitUp.TYPE).forEach(stored -> {
            KitUp old = stored.value();
            if (old.seats().stream().anyMatch(seat -> seat.spot().equals(from))) {
                List<KitUp.Seat> seats = old.seats().stream()
                        .map(seat -> seat.spot().equals(from) ? new KitUp.Seat(seat.symbol(), seat.drill(), to) : seat)
                        .distinct()
                        .toList();
                change.replace(KitUp.TYPE, stored, new KitUp(old.holder(), seats, old.on(), old.toClear()));
            }
        });
    }
}
