package org.glintery.activework;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.Spot;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/**
 * Takes back what a sitting booked, each movement by its reversal. Where the drills no longer lie as they did, since the
 * piece was kitted up or down or the canvas was counted, they go back to where the piece's drills are now. One thread.
 */
record SittingTakenBack(View view, UUID piece, String title, About on, DrillPlaces places, Drawing drawing) {

    /** Gives how many of each drill came back into the house. */
    Map<Drill, Long> takeBack(ChangeSet.Builder change, Optional<Stored<SittingBooking>> stored) {
        Map<Drill, Long> back = new HashMap<>();
        stored.ifPresent(booking -> booking.value().steps().forEach(step -> {
            Spot to = home(step);
            long taken = drawing.take(change, new Spot.OnCanvas(piece), step.drill(), step.count());
            boolean whole = taken == step.count() && to.equals(step.from());
            if (whole && SittingBooking.isAsPut(booking)) {
                change.post(reversal(step));
            } else if (taken > 0) {
                change.post(movedBack(step.drill(), to, taken));
            }
            if (to.inTheHouse()) {
                drawing.giveBack(change, to, step.drill(), taken);
                back.merge(step.drill(), taken, Long::sum);
            }
        }));
        return back;
    }

    private Spot home(SittingBooking.Step step) {
        Set<Spot> now = places.of(step.symbol(), step.drill());
        return step.from().isBoundary() || now.contains(step.from())
                ? step.from()
                : now.stream().findFirst().orElse(step.from());
    }

    private LedgerAction reversal(SittingBooking.Step step) {
        return new LedgerAction.Reversal(
                UUID.randomUUID(), step.movement(), reason(), Optional.of(on), Optional.empty());
    }

    private LedgerAction movedBack(Drill drill, Spot to, long count) {
        return new LedgerAction.Movement(
                UUID.randomUUID(),
                drill,
                Optional.empty(),
                new Spot.OnCanvas(piece),
                to,
                Amount.counted(count),
                reason(),
                Optional.of(on),
                Optional.empty());
    }

    private String reason() {
        return "not laid on " + title + " after all";
    }
}
