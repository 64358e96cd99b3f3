package org.glintery.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction.Movement;
import org.glintery.api.ledger.LedgerAction.Stocktake;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.Storage.Step;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.openide.util.NbBundle.Messages;

/** What hands do in one go, booked as they do it: steps for people, movements for the ledger. One thread. */
final class HandMoves {

    private final ChangeSet.Builder change;
    private final String reason;
    private final Optional<About> on;
    private final List<Step> steps = new ArrayList<>();

    HandMoves(ChangeSet.Builder change, String reason, Optional<About> on) {
        this.change = change;
        this.reason = reason;
        this.on = on;
    }

    /** All that is there, as sure or unsure as it is: the place is empty then, and known to be. */
    void all(Drill drill, Spot from, Spot to, Balance there) {
        if (from.equals(to)) {
            return;
        }
        if (there.count() > 0) {
            post(drill, from, to, amount(there.count(), there.uncertainty()));
        }
        if (there.uncounted() > 0) {
            post(drill, from, to, Amount.unknown());
        }
        if (there.variance() > 0) {
            pinEmpty(drill, from);
        }
        if (there.count() > 0 || there.uncounted() > 0) {
            steps.add(new Step(drill, from, to, there));
        }
    }

    /** Nothing is left in a place: what was unsure about it ends. */
    @Messages({"# {0} - what for, such as kit up of a piece", "HandMoves.emptied={0}, emptied"})
    void pinEmpty(Drill drill, Spot spot) {
        change.post(new Stocktake(
                UUID.randomUUID(),
                drill,
                spot,
                Amount.counted(0),
                Bundle.HandMoves_emptied(reason),
                on,
                Optional.empty()));
    }

    /** So many of them, counted out. */
    void some(Drill drill, Spot from, Spot to, long count) {
        post(drill, from, to, Amount.counted(count));
        steps.add(new Step(drill, from, to, new Balance(count, 0, 0)));
    }

    List<Step> steps() {
        return List.copyOf(steps);
    }

    private static Amount amount(long count, long uncertainty) {
        return uncertainty == 0 ? Amount.counted(count) : Amount.rough(count, uncertainty);
    }

    private void post(Drill drill, Spot from, Spot to, Amount amount) {
        change.post(new Movement(
                UUID.randomUUID(), drill, Optional.empty(), from, to, amount, reason, on, Optional.empty()));
    }
}
