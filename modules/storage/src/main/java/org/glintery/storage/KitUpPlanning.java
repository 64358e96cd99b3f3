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
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Pocket;
import org.glintery.api.storage.Storage.KitUpPlan;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** Plans which pocket of a holder each symbol of a piece lies in, in the order of its legend. Any thread. */
final class KitUpPlanning {

    private final View view;
    private final UUID piece;
    private final List<LegendLine> lines;
    private final DrillSources sources;

    KitUpPlanning(View view, UUID piece) {
        this.view = view;
        this.piece = piece;
        this.lines = Legend.of(view, piece).lines();
        this.sources = new DrillSources(view, piece);
    }

    Result<KitUpPlan> into(UUID holderId, Optional<About> on) {
        Optional<Stored<Piece>> value = view.find(Piece.TYPE, piece);
        Optional<Stored<Holder>> holder = view.find(Holder.TYPE, holderId);
        if (value.isEmpty() || holder.isEmpty()) {
            return Result.refused("gone", "That piece or holder is no longer in the workshop. Nothing was changed.");
        }
        List<Pocket> pockets = freePockets(holder.get());
        String title = value.get().value().title();
        Optional<Refusal> refusal = refusal(title, holder.get().value(), pockets);
        if (refusal.isPresent()) {
            return Result.refused(refusal.get());
        }
        KitUpPlan plan = plan(value.get().value(), holder.get(), pockets, on);
        return Result.ok(plan, warnings(plan, holder.get().value()));
    }

    private Optional<Refusal> refusal(String title, Holder holder, List<Pocket> pockets) {
        Optional<KitUp> old = KitUp.of(view, piece);
        if (old.isPresent()) {
            String where = view.find(Holder.TYPE, old.get().holder())
                    .map(h -> h.value().name())
                    .orElse("another holder");
            return Optional.of(new Refusal(
                    "kitted-up", title + " is kitted up in " + where + " already. Kit it down first. Nothing was moved."));
        }
        if (lines.isEmpty()) {
            return Optional.of(new Refusal(
                    "no-legend", title + " has no legend yet. Type or import it first. Nothing was moved."));
        }
        if (pockets.isEmpty()) {
            return Optional.of(new Refusal(
                    "no-pocket", "No pocket of " + holder.name() + " is empty. Pick another holder. Nothing was moved."));
        }
        return Optional.empty();
    }

    private KitUpPlan plan(Piece value, Stored<Holder> holder, List<Pocket> pockets, Optional<About> on) {
        Map<Drill, List<DrillSources.Portion>> portions = new LinkedHashMap<>();
        lines.forEach(line -> portions.computeIfAbsent(line.drill(), sources::of));
        List<Drill> drills = List.copyOf(portions.keySet());
        List<PocketSeating.Seated> seated = PocketSeating.seat(
                drills.stream().map(drill -> heap(drill, portions.get(drill))).toList(),
                pockets.stream().map(Pocket::capacity).toList());

        ChangeSet.Builder change = ChangeSet.named("Kit up " + value.title() + " in " + holder.value().name());
        KitBag kitBag = new KitBag(view, piece, value, sources.kitBags());
        KitUpMoves moves =
                new KitUpMoves(change, new HandMoves(change, "kit up of " + value.title(), on), kitBag);
        Map<Drill, List<Spot>> places = new LinkedHashMap<>();
        for (int i = 0; i < drills.size(); i++) {
            List<Spot> spots = seated.get(i).shares().stream()
                    .<Spot>map(share -> new Spot.InPocket(
                            holder.id(), pockets.get(share.pocket()).id()))
                    .toList();
            places.put(drills.get(i), moves.place(drills.get(i), portions.get(drills.get(i)), seated.get(i), spots));
        }
        List<KitUp.Seat> seats = seats(places);
        change.create(KitUp.TYPE, piece, new KitUp(holder.id(), seats, on, false));
        return new KitUpPlan(
                change.build(), seats, distinct(seats, Spot.InPocket.class), distinct(seats, Spot.InBag.class));
    }

    /** How much room a drill asks for: what is there; else what is needed, in a workshop that counts no drills. */
    private long heap(Drill drill, List<DrillSources.Portion> portions) {
        long there = portions.stream().mapToLong(DrillSources.Portion::wanted).sum();
        long expected = Settings.keepsDrills(view) ? there : sources.needed(drill).orElse(0L);
        return Math.max(1, Math.max(there, expected));
    }

    private List<Pocket> freePockets(Stored<Holder> holder) {
        Set<Spot> seated = new HashSet<>();
        view.all(KitUp.TYPE).forEach(k -> k.value().seats().forEach(seat -> seated.add(seat.spot())));
        return holder.value().pockets().stream()
                .filter(pocket -> {
                    Spot spot = new Spot.InPocket(holder.id(), pocket.id());
                    return !seated.contains(spot) && view.contents(spot).isEmpty();
                })
                .toList();
    }

    private List<KitUp.Seat> seats(Map<Drill, List<Spot>> places) {
        Set<KitUp.Seat> seats = new LinkedHashSet<>();
        for (LegendLine line : lines) {
            places.get(line.drill()).forEach(spot -> seats.add(new KitUp.Seat(line.symbol(), line.drill(), spot)));
        }
        return List.copyOf(seats);
    }

    private static int distinct(List<KitUp.Seat> seats, Class<? extends Spot> kind) {
        return (int) seats.stream()
                .map(KitUp.Seat::spot)
                .filter(kind::isInstance)
                .distinct()
                .count();
    }

    private List<String> warnings(KitUpPlan plan, Holder holder) {
        List<String> inBags = new ArrayList<>(plan.seats().stream()
                .filter(seat -> seat.spot() instanceof Spot.InBag)
                .map(KitUp.Seat::symbol)
                .distinct()
                .toList());
        if (inBags.isEmpty()) {
            return List.of();
        }
        return List.of(holder.name() + " has no room for all of it. In bags: " + String.join(", ", inBags) + ".");
    }
}
