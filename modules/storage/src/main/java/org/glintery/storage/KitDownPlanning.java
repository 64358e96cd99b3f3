package org.glintery.storage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.DrillPlaces;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Storage.KitDownPlan;
import org.glintery.api.storage.Storage.LeftoversPlan;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Precondition;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/**
 * Plans to clear a piece's holder: its seats only, for what else lies there is not the piece's. What is left of a made piece goes into a repair packet and bags of leftovers; the
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
        Optional<Stored<KitUp>> kitUp = view.find(KitUp.TYPE, piece);
        return piece(repairDrills)
                .then(value -> kitUp.isPresent() ? Result.ok(value) : inNoHolder(value))
                .then(value -> clear(value, kitUp, repairDrills, on))
                .then(cleared -> Result.ok(new KitDownPlan(
                        cleared.change(), kitUp.orElseThrow().value().holder(), cleared.steps())));
    }

    Result<LeftoversPlan> leftovers(long repairDrills, Optional<About> on) {
        List<Spot> kitBags = new DrillPlaces(view, piece).kitBags();
        boolean nothingLeft = kitBags.stream().allMatch(bag -> DrillPlaces.isEmpty(view, bag));
        return piece(repairDrills)
                .then(value ->
                        nothingLeft || goesOn(value) || KitUp.of(view, piece).isPresent()
                                ? inNoHolder(value)
                                : Result.ok(value))
                .then(value -> clear(value, Optional.empty(), repairDrills, on));
    }

    @Messages({"# {0} - title", "KitDownPlanning.inNoHolder={0} is in no holder. Nothing was moved."})
    private static Result<Piece> inNoHolder(Piece value) {
        return Result.refused("not-kitted-up", Bundle.KitDownPlanning_inNoHolder(value.title()));
    }

    @Messages({
        "KitDownPlanning.gone=That piece is no longer in the workshop. Nothing was changed.",
        "KitDownPlanning.lessThanNothing=A repair packet can't hold less than nothing. Nothing was moved."
    })
    private Result<Piece> piece(long repairDrills) {
        Optional<Stored<Piece>> stored = view.find(Piece.TYPE, piece);
        if (stored.isEmpty()) {
            return Result.refused("gone", Bundle.KitDownPlanning_gone());
        }
        if (repairDrills < 0) {
            return Result.refused("out-of-range", Bundle.KitDownPlanning_lessThanNothing());
        }
        return Result.ok(stored.get().value());
    }

    private static boolean goesOn(Piece value) {
        return value.standing() != Standing.MADE && value.standing() != Standing.LET_GO;
    }

    @Messages({
        "# {0} - title",
        "KitDownPlanning.change=Kit down {0}",
        "# {0} - title",
        "KitDownPlanning.reason=kit down of {0}"
    })
    private Result<LeftoversPlan> clear(
            Piece value, Optional<Stored<KitUp>> kitUp, long repairDrills, Optional<About> on) {
        boolean goesOn = goesOn(value);
        List<Spot> kitBags = new DrillPlaces(view, piece).kitBags();
        ChangeSet.Builder change = ChangeSet.named(Bundle.KitDownPlanning_change(value.title()));
        HandMoves moves = new HandMoves(change, Bundle.KitDownPlanning_reason(value.title()), on);
        Sorting sorting = goesOn
                ? new BackIntoKitBag(change, moves, new KitBag(view, piece, value, kitBags))
                : new LeftoverBags(view, piece, change, moves, new RepairPacket(view, piece, value, repairDrills));
        List<KitUp.Seat> seats = kitUp.map(up -> up.value().seats()).orElse(List.of());
        heaps(seats, goesOn ? List.of() : kitBags).forEach((drill, heap) -> {
            heap.forEach((spot, there) -> change.require(new Precondition.BalanceAt(spot, drill, there)));
            sorting.sort(drill, heap);
        });
        kitUp.ifPresent(up -> change.require(new Precondition.DocumentAt(KitUp.TYPE.ref(piece), up.version()))
                .remove(KitUp.TYPE.ref(piece)));
        List<String> warnings = new ArrayList<>(warnings(value, goesOn, kitUp.map(Stored::value)));
        if (!goesOn && repairDrills > 0 && uncounted(heaps(seats, kitBags))) {
            warnings.add(Bundle.KitDownPlanning_uncounted());
        }
        return Result.ok(new LeftoversPlan(change.build(), moves.steps()), warnings);
    }

    /** Whether of some drill there is nothing but what nobody has counted. */
    private static boolean uncounted(Map<Drill, Map<Spot, Balance>> heaps) {
        return heaps.values().stream()
                .anyMatch(
                        heap -> heap.values().stream().allMatch(there -> there.count() <= 0 && there.uncounted() > 0));
    }

    /** What lies at the piece's seats and in the bags of its kit, by drill. */
    private Map<Drill, Map<Spot, Balance>> heaps(List<KitUp.Seat> seats, List<Spot> kitBags) {
        Map<Drill, Map<Spot, Balance>> heaps = new LinkedHashMap<>();
        seats.forEach(seat -> add(heaps, seat.drill(), seat.spot()));
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

    private List<Spot> pockets(KitUp kitUp) {
        return view.find(Holder.TYPE, kitUp.holder())
                .map(holder -> holder.value().pockets().stream()
                        .<Spot>map(pocket -> new Spot.InPocket(holder.id(), pocket.id()))
                        .toList())
                .orElse(List.of());
    }

    @Messages({
        "# {0} - title",
        "KitDownPlanning.notMade={0} is not made yet, so its drills go back into the bag of its kit.",
        "KitDownPlanning.others=Other drills stay in the holder.",
        "KitDownPlanning.uncounted=Of drills that nobody has counted none go into the repair packet: put a few aside by hand."
    })
    private List<String> warnings(Piece value, boolean goesOn, Optional<KitUp> kitUp) {
        List<String> warnings = new ArrayList<>();
        if (goesOn) {
            warnings.add(Bundle.KitDownPlanning_notMade(value.title()));
        }
        if (kitUp.filter(this::leavesOthers).isPresent()) {
            warnings.add(Bundle.KitDownPlanning_others());
        }
        return warnings;
    }

    /** Whether anything stays in pockets in which no other piece sits. */
    private boolean leavesOthers(KitUp kitUp) {
        DrillPlaces places = new DrillPlaces(view, piece);
        return pockets(kitUp).stream()
                .filter(pocket -> !places.isKeptForOthers(pocket))
                .anyMatch(pocket -> view.contents(pocket).entrySet().stream()
                        .anyMatch(there -> !there.getValue().isEmpty() && !isSeat(kitUp, pocket, there.getKey())));
    }

    private static boolean isSeat(KitUp kitUp, Spot pocket, Drill drill) {
        return kitUp.seats().stream()
                .anyMatch(seat -> seat.spot().equals(pocket) && seat.drill().equals(drill));
    }

    /** What is done with all there is of one drill. */
    interface Sorting {
        void sort(Drill drill, Map<Spot, Balance> heap);
    }
}
