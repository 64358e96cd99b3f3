package org.glintery.storage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.DrillPlaces;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Storage.KitUpPlan;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.planning.PocketFilling;
import org.openide.util.NbBundle.Messages;

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

    @Messages("KitUpPlanning.gone=That piece or holder is no longer in the workshop. Nothing was changed.")
    Result<KitUpPlan> into(UUID holderId, Optional<About> on) {
        Optional<Stored<Piece>> value = view.find(Piece.TYPE, piece);
        Optional<Stored<Holder>> holder = view.find(Holder.TYPE, holderId);
        if (value.isEmpty() || holder.isEmpty()) {
            return Result.refused("gone", Bundle.KitUpPlanning_gone());
        }
        List<PocketFilling.Pocket> row = row(holder.get());
        String title = value.get().value().title();
        Optional<Refusal> refusal =
                done(value.get().value()).or(() -> refusal(title, holder.get().value(), row));
        if (refusal.isPresent()) {
            return Result.refused(refusal.get());
        }
        KitUpPlan plan = plan(value.get().value(), holder.get(), row, on);
        return Result.ok(plan, warnings(plan, holder.get().value()));
    }

    @Messages({
        "# {0} - title",
        "KitUpPlanning.made={0} is made, so there is nothing left to kit up. Nothing was moved.",
        "# {0} - title",
        "KitUpPlanning.letGo={0} was let go, so there is nothing to kit up. Nothing was moved."
    })
    private static Optional<Refusal> done(Piece piece) {
        if (piece.standing() == Standing.MADE) {
            return Optional.of(new Refusal("already-made", Bundle.KitUpPlanning_made(piece.title())));
        }
        return piece.standing() == Standing.LET_GO
                ? Optional.of(new Refusal("let-go", Bundle.KitUpPlanning_letGo(piece.title())))
                : Optional.empty();
    }

    @Messages({
        "# {0} - title",
        "# {1} - holder",
        "KitUpPlanning.kittedUp={0} is kitted up in {1} already. Kit it down first. Nothing was moved.",
        "# {0} - title",
        "KitUpPlanning.kittedUpElsewhere={0} is kitted up in another holder already. Kit it down first. Nothing was moved.",
        "# {0} - title",
        "KitUpPlanning.noLegend={0} has no legend yet. Type or import it first. Nothing was moved.",
        "# {0} - holder",
        "KitUpPlanning.noPocket=No pocket of {0} is empty. Pick another holder. Nothing was moved."
    })
    private Optional<Refusal> refusal(String title, Holder holder, List<PocketFilling.Pocket> row) {
        Optional<KitUp> old = KitUp.of(view, piece);
        if (old.isPresent()) {
            String text = view.find(Holder.TYPE, old.get().holder())
                    .map(where ->
                            Bundle.KitUpPlanning_kittedUp(title, where.value().name()))
                    .orElse(Bundle.KitUpPlanning_kittedUpElsewhere(title));
            return Optional.of(new Refusal("kitted-up", text));
        }
        if (lines.isEmpty()) {
            return Optional.of(new Refusal("no-legend", Bundle.KitUpPlanning_noLegend(title)));
        }
        if (row.stream().noneMatch(PocketFilling.Pocket::free)) {
            return Optional.of(new Refusal("no-pocket", Bundle.KitUpPlanning_noPocket(holder.name())));
        }
        return Optional.empty();
    }

    @Messages({
        "# {0} - title",
        "# {1} - holder",
        "KitUpPlanning.change=Kit up {0} in {1}",
        "# {0} - title",
        "KitUpPlanning.reason=kit up of {0}"
    })
    private KitUpPlan plan(Piece value, Stored<Holder> holder, List<PocketFilling.Pocket> row, Optional<About> on) {
        Map<Drill, List<DrillSources.Portion>> portions = new LinkedHashMap<>();
        lines.forEach(line -> portions.computeIfAbsent(line.drill(), sources::of));
        List<Drill> drills = List.copyOf(portions.keySet());
        List<PocketFilling.Placement> placements = PocketFilling.fill(
                drills.stream().map(drill -> room(drill, portions.get(drill))).toList(), row);

        ChangeSet.Builder change = ChangeSet.named(
                Bundle.KitUpPlanning_change(value.title(), holder.value().name()));
        KitBag kitBag = new KitBag(view, piece, value, sources.kitBags());
        KitUpMoves moves = new KitUpMoves(
                view, change, new HandMoves(change, Bundle.KitUpPlanning_reason(value.title()), on), kitBag);
        Map<Drill, List<Spot>> places = new LinkedHashMap<>();
        for (int i = 0; i < drills.size(); i++) {
            Drill drill = drills.get(i);
            places.put(drill, moves.place(drill, portions.get(drill), rooms(holder, placements.get(i))));
        }
        List<KitUp.Seat> seats = seats(places);
        change.create(KitUp.TYPE, piece, new KitUp(holder.id(), seats, on, false));
        return new KitUpPlan(
                change.build(), seats, distinct(seats, Spot.InPocket.class), distinct(seats, Spot.InBag.class));
    }

    /**
     * How much room a drill asks for: what is there; else what is needed, in a workshop that counts no drills. Empty when
     * that is not known.
     */
    private OptionalLong room(Drill drill, List<DrillSources.Portion> portions) {
        long there = portions.stream().mapToLong(DrillSources.Portion::wanted).sum();
        long room = there == 0 && !Settings.keepsDrills(view)
                ? sources.needed(drill).orElse(0L)
                : there;
        return room > 0 ? OptionalLong.of(room) : OptionalLong.empty();
    }

    private static List<KitUpMoves.Room> rooms(Stored<Holder> holder, PocketFilling.Placement placement) {
        return placement.fills().stream()
                .map(fill -> new KitUpMoves.Room(
                        new Spot.InPocket(
                                holder.id(),
                                holder.value().pockets().get(fill.pocket()).id()),
                        fill.units().orElse(Long.MAX_VALUE)))
                .toList();
    }

    /** The pockets in their order; taken is what holds drills or is a symbol's place. */
    private List<PocketFilling.Pocket> row(Stored<Holder> holder) {
        Set<Spot> seated = DrillPlaces.pocketsSeated(view).keySet();
        return holder.value().pockets().stream()
                .map(pocket -> {
                    Spot spot = new Spot.InPocket(holder.id(), pocket.id());
                    boolean free = !seated.contains(spot) && DrillPlaces.isEmpty(view, spot);
                    OptionalLong capacity =
                            pocket.capacity().map(OptionalLong::of).orElse(OptionalLong.empty());
                    return new PocketFilling.Pocket(free, capacity);
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

    @Messages({
        "# {0} - holder",
        "# {1} - symbols",
        "KitUpPlanning.inBags={0} has no room for all of it. In bags: {1}.",
        "# {0} - holder",
        "# {1} - who has it",
        "KitUpPlanning.lent={0} is lent to {1}. Get it back first, or pick another holder."
    })
    private List<String> warnings(KitUpPlan plan, Holder holder) {
        List<String> warnings = new ArrayList<>();
        holder.lentTo().ifPresent(who -> warnings.add(Bundle.KitUpPlanning_lent(holder.name(), who)));
        List<String> inBags = plan.seats().stream()
                .filter(seat -> seat.spot() instanceof Spot.InBag)
                .map(KitUp.Seat::symbol)
                .distinct()
                .toList();
        if (!inBags.isEmpty()) {
            warnings.add(Bundle.KitUpPlanning_inBags(holder.name(), String.join(", ", inBags)));
        }
        return warnings;
    }
}
