package org.glintery.stash;

import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.Bag;
import org.glintery.api.workshop.View;

/** Drills that are kept for repairs: in the house, but not for laying. */
final class RepairPackets {

    private RepairPackets() {}

    static boolean is(View view, Spot spot) {
        return spot instanceof Spot.InBag in
                && view.find(Bag.TYPE, in.bag())
                        .filter(bag -> bag.value().repairFor().isPresent())
                        .isPresent();
    }

    /** How many of a drill lie in repair packets. */
    static long held(View view, Drill drill) {
        return view.whereabouts(drill).entrySet().stream()
                .filter(place -> is(view, place.getKey()))
                .mapToLong(place -> place.getValue().count())
                .sum();
    }
}
