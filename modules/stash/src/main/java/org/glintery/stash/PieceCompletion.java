package org.glintery.stash;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.activework.Completion;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction.Movement;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.DrillPlaces;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.FoundDrills;
import org.glintery.api.workshop.Precondition;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** What the stash does when a piece is completed: its standing, and the last drills onto its canvas. Any thread. */
final class PieceCompletion {

    private final View view;
    private final Completion completion;
    private final UUID piece;
    private final DrillPlaces places;
    private final PieceReservations reservations;

    PieceCompletion(View view, Completion completion) {
        this.view = view;
        this.completion = completion;
        this.piece = completion.piece();
        this.places = new DrillPlaces(view, piece);
        this.reservations = new PieceReservations(view, piece);
    }

    @Messages({
        "# {0} - title",
        "PieceCompletion.made={0} is made already. Nothing was changed.",
        "# {0} - title",
        "PieceCompletion.change=Complete {0}"
    })
    Result<ChangeSet> complete() {
        Optional<Stored<Piece>> stored = view.find(Piece.TYPE, piece);
        if (stored.isEmpty()) {
            return PieceEdits.noPiece();
        }
        Piece value = stored.get().value();
        if (value.standing() == Standing.MADE) {
            return Result.refused("already-made", Bundle.PieceCompletion_made(value.title()));
        }
        ChangeSet.Builder change = ChangeSet.named(Bundle.PieceCompletion_change(value.title()))
                .replace(Piece.TYPE, stored.get(), value.with(Standing.MADE, Optional.of(completion.on())));
        reservations.release(change);
        if (Settings.keepsDrills(view)) {
            needs().forEach((drill, needed) -> lay(change, drill, needed, value.title()));
        }
        return Result.ok(change.build());
    }

    /** What the chart asks for, by drill; lines without a number are left out, for not known is not 0. */
    private Map<Drill, Long> needs() {
        Map<Drill, Long> needs = new LinkedHashMap<>();
        for (LegendLine line : Legend.of(view, piece).lines()) {
            line.needed().ifPresent(needed -> needs.merge(line.drill(), needed, Long::sum));
        }
        return needs;
    }

    @Messages({"# {0} - title", "PieceCompletion.laid=laid on {0}"})
    private void lay(ChangeSet.Builder change, Drill drill, long needed, String title) {
        Balance laid = view.balance(new Spot.OnCanvas(piece), drill);
        long left = needed - laid.count();
        if (left <= 0) {
            return;
        }
        change.require(new Precondition.BalanceAt(new Spot.OnCanvas(piece), drill, laid));
        long takable = Math.min(left, takable(drill));
        for (Spot spot : sources(drill)) {
            Balance there = view.balance(spot, drill);
            long taken = Math.min(takable, there.count());
            if (taken > 0) {
                change.require(new Precondition.BalanceAt(spot, drill, there));
                change.post(ontoCanvas(drill, spot, taken, Bundle.PieceCompletion_laid(title)));
                takable -= taken;
                left -= taken;
            }
        }
        if (left > 0) {
            change.post(ontoCanvas(drill, Spot.FOUND, left, foundReason(drill, title)));
            FoundDrills.add(change, view, new Spot.OnCanvas(piece), drill, left);
        }
    }

    /** What is free for the piece, but never less than was set aside for it: a shortage is not its own alone. */
    private long takable(Drill drill) {
        long free = view.inTheHouse(drill) - reservedForOthers(drill) - DrillPlaces.inRepairPackets(view, drill);
        return Math.max(free, reservations.of(drill));
    }

    private long reservedForOthers(Drill drill) {
        return Math.max(0, view.reserved(drill) - reservations.of(drill));
    }

    /** The piece's own pockets and bag first, then loose bags, then loose pockets: always in the same order. */
    private Set<Spot> sources(Drill drill) {
        Set<Spot> sources = new LinkedHashSet<>(places.of(drill));
        view.whereabouts(drill).keySet().stream()
                .filter(spot -> spot.inTheHouse() && !places.isKeptForOthers(spot))
                .sorted(Comparator.comparing(Spot::toString))
                .forEach(sources::add);
        return sources;
    }

    @Messages({
        "# {0} - title",
        "PieceCompletion.foundUncounted=found: laid on {0} from drills that were not counted",
        "# {0} - title",
        "PieceCompletion.foundMore=found: {0} took more than was booked"
    })
    private String foundReason(Drill drill, String title) {
        boolean uncounted = places.of(drill).stream()
                .anyMatch(spot -> view.balance(spot, drill).uncounted() > 0);
        return uncounted ? Bundle.PieceCompletion_foundUncounted(title) : Bundle.PieceCompletion_foundMore(title);
    }

    private Movement ontoCanvas(Drill drill, Spot from, long count, String reason) {
        return new Movement(
                UUID.randomUUID(),
                drill,
                Optional.empty(),
                from,
                new Spot.OnCanvas(piece),
                Amount.counted(count),
                reason,
                Optional.of(completion.on()),
                Optional.empty());
    }
}
