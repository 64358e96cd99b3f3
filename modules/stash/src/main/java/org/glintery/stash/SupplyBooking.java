package org.glintery.stash;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction.Movement;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.Bag;
import org.glintery.api.storage.BagNames;
import org.glintery.api.storage.DrillPlaces;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.FoundDrills;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/**
 * Books what came with a piece: from the supplier into the piece's bag, set aside for the piece. Afterwards only what
 * differs from what was booked is booked. Not safe for use by several threads.
 */
final class SupplyBooking {

    private static final Set<Standing> IN_THE_HOUSE = Set.of(Standing.SHELVED, Standing.ON_THE_BENCH, Standing.RESTING);

    private final View view;
    private final UUID piece;
    private final Piece value;
    private final Optional<String> source;
    private final Optional<About> arrivedOn;
    private final DrillPlaces places;
    private final PieceReservations reservations;
    private final BagNames names;
    private Optional<Spot> bag;

    SupplyBooking(View view, UUID piece, Piece value, Optional<Kit> kit, BagNames names) {
        this.view = view;
        this.piece = piece;
        this.value = value;
        this.source = kit.flatMap(Kit::source);
        this.arrivedOn = kit.flatMap(Kit::arrivedOn);
        this.places = new DrillPlaces(view, piece);
        this.reservations = new PieceReservations(view, piece);
        this.names = names;
        this.bag = places.kitBags().stream().findFirst();
    }

    /** Books the legend's supplies, when the workshop keeps drills and the piece's are in the house. */
    void book(ChangeSet.Builder change, List<LegendLine> legend) {
        if (Settings.keepsDrills(view)) {
            bookFromNowOn(change, legend);
        }
    }

    /** The same in the change that begins to keep drills. */
    void bookFromNowOn(ChangeSet.Builder change, List<LegendLine> legend) {
        if (!IN_THE_HOUSE.contains(value.standing())) {
            return;
        }
        Optional<Stored<SuppliesBooked>> booked = view.find(SuppliesBooked.TYPE, piece);
        int drillsPerBag = SuppliesBooked.drillsPerBag(view, piece, source);
        Map<Drill, SuppliedDrills> before = SuppliesBooked.of(booked);
        Map<Drill, SuppliedDrills> after = SuppliedDrills.of(legend, drillsPerBag);
        Set<Drill> drills = new LinkedHashSet<>(before.keySet());
        drills.addAll(after.keySet());
        for (Drill drill : drills) {
            bookDrill(
                    change,
                    drill,
                    before.getOrDefault(drill, SuppliedDrills.NONE),
                    after.getOrDefault(drill, SuppliedDrills.NONE));
        }
        if (!after.equals(before)) {
            SuppliesBooked now = SuppliesBooked.of(drillsPerBag, after);
            booked.ifPresentOrElse(
                    old -> change.replace(SuppliesBooked.TYPE, old, now),
                    () -> change.create(SuppliesBooked.TYPE, piece, now));
        }
    }

    @Messages({
        "# {0} - title",
        "SupplyBooking.nowTold=now told how many came with {0}",
        "# {0} - title",
        "SupplyBooking.came=came with {0}",
        "# {0} - title",
        "SupplyBooking.cameUncounted=came with {0}, not counted yet"
    })
    private void bookDrill(ChangeSet.Builder change, Drill drill, SuppliedDrills before, SuppliedDrills after) {
        if (after.count() < before.count()) {
            takeBack(change, drill, before.count() - after.count());
        }
        Optional<Spot> uncountedAt = Optional.empty();
        if (before.uncounted() && !after.uncounted()) {
            uncountedAt = uncounted(drill);
            uncountedAt.ifPresent(spot -> change.post(
                    movement(drill, spot, supplier(), Amount.unknown(), Bundle.SupplyBooking_nowTold(title()))));
        }
        Optional<Amount> more = after.beyond(before);
        if (more.isPresent()) {
            Spot to = uncountedAt.orElseGet(() -> bag(change));
            change.post(movement(drill, supplier(), to, more.get(), Bundle.SupplyBooking_came(title())));
            long count = more.get().count().orElseThrow();
            setAside(change, drill, count - laidAlready(change, drill, to, count));
        }
        if (after.uncounted() && !before.uncounted()) {
            change.post(movement(
                    drill, supplier(), bag(change), Amount.unknown(), Bundle.SupplyBooking_cameUncounted(title())));
        }
    }

    /** What was laid before it was told is on the canvas, booked from found: it does not lie in the bag as well. */
    @Messages({"# {0} - title", "SupplyBooking.laidBefore=laid on {0} before it was told how many came"})
    private long laidAlready(ChangeSet.Builder change, Drill drill, Spot from, long told) {
        Spot canvas = new Spot.OnCanvas(piece);
        long laid = Math.min(told, FoundDrills.at(view, canvas, drill));
        if (laid > 0) {
            change.post(
                    movement(drill, from, Spot.FOUND, Amount.counted(laid), Bundle.SupplyBooking_laidBefore(title())));
            FoundDrills.add(change, view, canvas, drill, -laid);
        }
        return laid;
    }

    /** A correction downwards is booked as lost only as far as drills are there. */
    @Messages({"# {0} - title", "SupplyBooking.fewer=fewer came with {0} than was told"})
    private void takeBack(ChangeSet.Builder change, Drill drill, long fewer) {
        reservations.set(change, drill, Math.max(0, reservations.of(drill) - fewer));
        long left = fewer;
        for (Spot spot : places.of(drill)) {
            long taken = Math.min(left, view.balance(spot, drill).count());
            if (taken > 0) {
                change.post(
                        movement(drill, spot, Spot.LOST, Amount.counted(taken), Bundle.SupplyBooking_fewer(title())));
                left -= taken;
            }
        }
    }

    /** Never more than is there: after a loss, more may be set aside for others than the house holds. */
    private void setAside(ChangeSet.Builder change, Drill drill, long more) {
        long free = Math.max(0, Math.min(more, view.available(drill) + more));
        if (free > 0) {
            reservations.set(change, drill, Math.min(Amount.MOST, reservations.of(drill) + free));
        }
    }

    private Optional<Spot> uncounted(Drill drill) {
        return places.of(drill).stream()
                .filter(spot -> view.balance(spot, drill).uncounted() > 0)
                .findFirst();
    }

    private Spot bag(ChangeSet.Builder change) {
        if (bag.isEmpty()) {
            UUID id = UUID.randomUUID();
            Bag made = new Bag(names.free(value.title()), value.keptAt(), Optional.of(piece), Optional.empty());
            change.create(Bag.TYPE, id, made);
            bag = Optional.of(new Spot.InBag(id));
        }
        return bag.get();
    }

    private Spot supplier() {
        return source.isPresent() ? new Spot.Boundary(Spot.Edge.SUPPLIER, source) : Spot.SUPPLIER;
    }

    private String title() {
        return value.title();
    }

    private Movement movement(Drill drill, Spot from, Spot to, Amount amount, String reason) {
        return new Movement(
                UUID.randomUUID(), drill, Optional.empty(), from, to, amount, reason, arrivedOn, Optional.empty());
    }
}
