package org.glintery.storage;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Storage.KitDownPlan;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Precondition;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/**
 * Plans to clear a piece's holder. What is left of a made piece goes into a repair packet and bags of leftovers; the
 * drills of a piece that goes on go back into the bag of its kit. Any thread.
 */
final class KitDownPlanning {

    private final View view;
    private final UUID piece;

    KitDownPlanning(View view, UUID piece) {
        this.view = view;
        this.piece = piece;
    }

    Result<KitDownPlan> plan(long repairDrills, Optional<About> on) {
        Optional<Stored<Piece>> stored = view.find(Piece.TYPE, piece);
        Optional<Stored<KitUp>> kitUp = view.find(KitUp.TYPE, piece);
        if (stored.isEmpty()) {
            return Result.refused("gone", "That piece is no longer in the workshop. Nothing was changed.");
        }
        Piece value = stored.get().value();
        if (kitUp.isEmpty()) {
            return Result.refused("not-kitted-up", value.title() + " is in no holder. Nothing was moved.");
        }
        if (repairDrills < 0) {
            return Result.refused("out-of-range", "A repair packet can't hold less than nothing. Nothing was moved.");
        }
        boolean goesOn = value.standing() != Standing.MADE && value.standing() != Standing.LET_GO;
        ChangeSet.Builder change = ChangeSet.named("Kit down " + value.title());
        change.require(
                new Precondition.DocumentAt(KitUp.TYPE.ref(piece), kitUp.get().version()));
        DrillSources sources = new DrillSources(view, piece);
        HandMoves moves = new HandMoves(change, "kit down of " + value.title(), on);
        Sorting sorting = goesOn
                ? new BackIntoKitBag(change, moves, new KitBag(view, piece, value, sources.kitBags()))
                : new LeftoverBags(view, change, moves, new RepairPacket(view, piece, value, repairDrills));
        heaps(kitUp.get().value(), goesOn ? List.of() : sources.kitBags()).forEach((drill, heap) -> {
            heap.forEach((spot, there) -> change.require(new Precondition.BalanceAt(spot, drill, there)));
            sorting.sort(drill, heap);
        });
        change.remove(KitUp.TYPE.ref(piece));
        UUID holder = kitUp.get().value().holder();
        return Result.ok(
                new KitDownPlan(change.build(), holder, moves.steps()),
                warnings(value, goesOn, kitUp.get().value()));
    }

    /** What lies in the piece's pockets and bags, by drill. */
    private Map<Drill, Map<Spot, Balance>> heaps(KitUp kitUp, List<Spot> kitBags) {
        Map<Drill, Map<Spot, Balance>> heaps = new LinkedHashMap<>();
        kitUp.seats().forEach(seat -> add(heaps, seat.drill(), seat.spot()));
        for (Spot spot : seatPockets(kitUp)) {
            view.contents(spot).keySet().forEach(drill -> add(heaps, drill, spot));
        }
        for (Spot spot : otherPockets(kitUp)) {
            Legend.of(view, piece).lines().forEach(line -> add(heaps, line.drill(), spot));
        }
        for (Spot bag : kitBags) {
            view.contents(bag).keySet().forEach(drill -> add(heaps, drill, bag));
        }
        return heaps;
    }

    private void add(Map<Drill, Map<Spot, Balance>> heaps, Drill drill, Spot spot) {
        Balance there = view.balance(spot, drill);
        if (!there.isZero()) {
            heaps.computeIfAbsent(drill, d -> new LinkedHashMap<>()).put(spot, there);
        }
    }

    private static Set<Spot> seatPockets(KitUp kitUp) {
        Set<Spot> pockets = new LinkedHashSet<>();
        kitUp.seats().stream()
                .map(KitUp.Seat::spot)
                .filter(Spot.InPocket.class::isInstance)
                .forEach(pockets::add);
        return pockets;
    }

    /** Pockets of the holder in which no piece sits: drills of this piece that were moved there belong to it. */
    private List<Spot> otherPockets(KitUp kitUp) {
        Set<Spot> seated = new HashSet<>();
        view.all(KitUp.TYPE).forEach(k -> seated.addAll(seatPockets(k.value())));
        return pockets(kitUp).stream().filter(spot -> !seated.contains(spot)).toList();
    }

    private List<Spot> pockets(KitUp kitUp) {
        return view.find(Holder.TYPE, kitUp.holder())
                .map(holder -> holder.value().pockets().stream()
                        .<Spot>map(pocket -> new Spot.InPocket(holder.id(), pocket.id()))
                        .toList())
                .orElse(List.of());
    }

    private List<String> warnings(Piece value, boolean goesOn, KitUp kitUp) {
        List<String> warnings = new ArrayList<>();
        if (goesOn) {
            warnings.add(value.title() + " is not made yet, so its drills go back into the bag of its kit.");
        }
        Set<Drill> own = new HashSet<>();
        Legend.of(view, piece).lines().forEach(line -> own.add(line.drill()));
        boolean others = otherPockets(kitUp).stream()
                .anyMatch(spot -> !own.containsAll(view.contents(spot).keySet()));
        if (others) {
            warnings.add("Other drills stay in the holder.");
        }
        return warnings;
    }

    /** What is done with all there is of one drill. */
    interface Sorting {
        void sort(Drill drill, Map<Spot, Balance> heap);
    }
}
