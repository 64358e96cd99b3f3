package org.glintery.storage;

import java.util.Map;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.ChangeSet;

/** Puts every drill back where it came from: the bag of the kit. One thread. */
record BackIntoKitBag(ChangeSet.Builder change, HandMoves moves, KitBag kitBag) implements KitDownPlanning.Sorting {

    @Override
    public void sort(Drill drill, Map<Spot, Balance> heap) {
        heap.forEach((spot, there) -> {
            if (spot instanceof Spot.InPocket) {
                moves.all(drill, spot, kitBag.in(change), there);
            }
        });
    }
}
