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
import org.glintery.api.storage.DrillPlaces;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.openide.util.NbBundle.Messages;

/**
 * Takes back what a sitting booked, each movement by its reversal. Where the drills no longer lie as they did, since the
 * piece was kitted up or down or the canvas was counted, they go back to where the piece's drills are now. One thread.
 */
record SittingTakenBack(UUID piece, String title, About on, DrillPlaces places, Drawing drawing, FoundOnCanvas found) {

    /** Gives how many of each drill came back into the house. */
    Map<Drill, Long> takeBack(ChangeSet.Builder change, Optional<Stored<SittingBooking>> stored) {
        Map<Drill, Long> back = new HashMap<>();
        stored.ifPresent(booking -> booking.value().steps().forEach(step -> {
            boolean asPut = SittingBooking.isAsPut(booking);
            back.merge(step.drill(), takeBack(change, step, asPut), Long::sum);
        }));
        return back;
    }

    private long takeBack(ChangeSet.Builder change, SittingBooking.Step step, boolean asPut) {
        Drill drill = step.drill();
        boolean wasFound = step.from().isBoundary();
        long taken = drawing.take(change, new Spot.OnCanvas(piece), drill, step.count());
        // what was found and has been told of since came with the piece: it lies with its other drills
        long notFound = wasFound ? Math.min(taken, found.unexplained(drill)) : 0;
        Spot home = home(step);
        long returned = home.inTheHouse() ? taken - notFound : 0;
        found.add(drill, -notFound);
        found.toldSince(drill, wasFound ? returned : 0);
        if (returned > 0) {
            drawing.giveBack(change, home, drill, returned);
        }
        boolean asBooked = wasFound ? returned == 0 : home.equals(step.from());
        if (asBooked && asPut && taken == step.count()) {
            change.post(reversal(step));
            return returned;
        }
        if (returned > 0) {
            change.post(movedBack(drill, home, returned));
        }
        if (taken > returned) {
            change.post(movedBack(drill, step.from(), taken - returned));
        }
        return returned;
    }

    private Spot home(SittingBooking.Step step) {
        Set<Spot> now = places.of(step.symbol(), step.drill());
        return now.contains(step.from())
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

    @Messages({"# {0} - title", "SittingTakenBack.reason=not laid on {0} after all"})
    private String reason() {
        return Bundle.SittingTakenBack_reason(title);
    }
}
