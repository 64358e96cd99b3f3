package org.glintery.stash;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.Bag;
import org.glintery.api.storage.KitUp;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** Where the drills of one piece lie: the pockets it is kitted up in, and the bag of its kit. Any thread. */
final class PiecePlaces {

    private final View view;
    private final UUID piece;

    PiecePlaces(View view, UUID piece) {
        this.view = view;
        this.piece = piece;
    }

    /** The bag that came with the piece, when there is one. */
    Optional<Spot> kitBag() {
        return kitBags().stream().findFirst();
    }

    /** Pockets first, in symbol order, then the kit's bag. */
    List<Spot> holding(Drill drill) {
        Set<Spot> places = new LinkedHashSet<>();
        KitUp.of(view, piece)
                .ifPresent(kitUp -> kitUp.seats().stream()
                        .filter(seat -> seat.drill().equals(drill))
                        .map(KitUp.Seat::spot)
                        .forEach(places::add));
        places.addAll(kitBags());
        return List.copyOf(places);
    }

    private List<Spot> kitBags() {
        return view.derived(PiecePlaces.class, PiecePlaces::bagsByPiece).getOrDefault(piece, List.of());
    }

    private static Map<UUID, List<Spot>> bagsByPiece(View view) {
        Map<UUID, List<Spot>> bags = new HashMap<>();
        for (Stored<Bag> bag : view.all(Bag.TYPE)) {
            bag.value()
                    .ofPiece()
                    .ifPresent(piece ->
                            bags.computeIfAbsent(piece, p -> new ArrayList<>()).add(new Spot.InBag(bag.id())));
        }
        return bags;
    }
}
