package org.glintery.activework;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.Bag;
import org.glintery.api.storage.KitUp;
import org.glintery.api.workshop.View;

/** Where a maker takes the drills of a piece from. Any thread. */
final class DrillPlaces {

    private final List<KitUp.Seat> seats;
    private final List<Spot> bags;

    DrillPlaces(View view, UUID piece) {
        seats = KitUp.of(view, piece).map(KitUp::seats).orElse(List.of());
        List<Spot> ofPiece = new ArrayList<>();
        view.all(Bag.TYPE).stream()
                .filter(bag -> bag.value().ofPiece().filter(piece::equals).isPresent())
                .forEach(bag -> ofPiece.add(new Spot.InBag(bag.id())));
        bags = List.copyOf(ofPiece);
    }

    /** The symbol's own pockets, those of other symbols with the same drill, then the bag that came with the piece. */
    Set<Spot> of(String symbol, Drill drill) {
        Set<Spot> spots = new LinkedHashSet<>();
        seats.stream()
                .filter(seat -> seat.drill().equals(drill) && seat.symbol().equals(symbol))
                .forEach(seat -> spots.add(seat.spot()));
        seats.stream().filter(seat -> seat.drill().equals(drill)).forEach(seat -> spots.add(seat.spot()));
        spots.addAll(bags);
        return spots;
    }
}
