package org.glintery.storage;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.Bag;
import org.glintery.api.storage.BagNames;
import org.glintery.api.storage.DrillPlaces;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/**
 * First a few of each colour into the repair packet, then the rest into one bag a colour: the bag of leftovers that
 * the colour already has, else a new one named by card and code. One thread.
 */
final class LeftoverBags implements KitDownPlanning.Sorting {

    private final View view;
    private final ChangeSet.Builder change;
    private final HandMoves moves;
    private final RepairPacket packet;
    private final List<Spot> kitBags;
    private final BagNames names;
    private final Map<String, Stored<Bag>> emptyByName = new HashMap<>();

    LeftoverBags(View view, UUID piece, ChangeSet.Builder change, HandMoves moves, RepairPacket packet) {
        this.kitBags = new DrillPlaces(view, piece).kitBags();
        this.view = view;
        this.change = change;
        this.moves = moves;
        this.packet = packet;
        this.names = new BagNames(view);
        view.all(Bag.TYPE).stream()
                .filter(bag -> isForLeftovers(bag.value()) && DrillPlaces.isEmpty(view, new Spot.InBag(bag.id())))
                .forEach(bag -> emptyByName.putIfAbsent(key(bag.value().name()), bag));
    }

    @Override
    public void sort(Drill drill, Map<Spot, Balance> heap) {
        packet.fill(drill, heap, change, moves);
        Map<Spot, Balance> rest = new LinkedHashMap<>();
        heap.forEach((spot, there) -> {
            // a loose bag in which the piece had its seat is a home already
            boolean loose = spot instanceof Spot.InBag && !kitBags.contains(spot);
            if (loose) {
                return;
            }
            if (there.count() > 0 || there.uncounted() > 0) {
                rest.put(spot, there);
            } else if (there.variance() > 0) {
                moves.pinEmpty(drill, spot);
            }
        });
        if (!rest.isEmpty()) {
            Spot home = home(drill);
            rest.forEach((spot, there) -> moves.all(drill, spot, home, there));
        }
    }

    private Spot home(Drill drill) {
        return bagOfItsOwn(drill).or(() -> emptyNamed(drill)).orElseGet(() -> newBag(drill));
    }

    /** The fullest bag of leftovers in which only this drill lies. */
    private Optional<Spot> bagOfItsOwn(Drill drill) {
        return view.whereabouts(drill).entrySet().stream()
                .filter(place -> place.getKey() instanceof Spot.InBag in
                        && view.find(Bag.TYPE, in.bag())
                                .filter(bag -> isForLeftovers(bag.value()))
                                .isPresent()
                        && view.contents(place.getKey()).size() == 1)
                .max(Comparator.comparingLong((Map.Entry<Spot, Balance> place) ->
                                place.getValue().count())
                        .thenComparing(place -> place.getKey().toString()))
                .map(Map.Entry::getKey);
    }

    private Optional<Spot> emptyNamed(Drill drill) {
        return Optional.ofNullable(emptyByName.remove(key(name(drill)))).map(bag -> new Spot.InBag(bag.id()));
    }

    private Spot newBag(Drill drill) {
        UUID id = UUID.randomUUID();
        change.create(Bag.TYPE, id, Bag.named(names.free(name(drill))));
        return new Spot.InBag(id);
    }

    private static boolean isForLeftovers(Bag bag) {
        return bag.ofPiece().isEmpty() && !bag.isRepairPacket();
    }

    private static String name(Drill drill) {
        return drill.card() + " " + drill.code();
    }

    private static String key(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
