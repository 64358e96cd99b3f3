package org.glintery.storage;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Precondition;

/** Moves one drill after another from its bags into the pockets it was dealt. One thread. */
final class KitUpMoves {

    private final ChangeSet.Builder change;
    private final HandMoves moves;
    private final KitBag kitBag;

    KitUpMoves(ChangeSet.Builder change, HandMoves moves, KitBag kitBag) {
        this.change = change;
        this.moves = moves;
        this.kitBag = kitBag;
    }

    /** Fills the pockets in order. What finds no room stays in its bag. Gives every place the drill is in then. */
    List<Spot> place(
            Drill drill, List<DrillSources.Portion> portions, PocketSeating.Seated seated, List<Spot> pockets) {
        Set<Spot> places = new LinkedHashSet<>(pockets);
        List<Room> rooms = new ArrayList<>();
        for (int i = 0; i < pockets.size(); i++) {
            rooms.add(new Room(pockets.get(i), seated.shares().get(i).drills()));
        }
        Iterator<Room> next = rooms.iterator();
        Room room = next.hasNext() ? next.next() : Room.NONE;
        for (DrillSources.Portion portion : portions) {
            change.require(new Precondition.BalanceAt(portion.spot(), drill, portion.there()));
            if (pockets.isEmpty()) {
                places.add(portion.spot());
                continue;
            }
            if (portion.there().uncounted() > 0) {
                moves.all(drill, portion.spot(), pockets.get(0), new Balance(0, 0, portion.there().uncounted()));
            }
            long left = portion.wanted();
            while (left > 0 && (room.left > 0 || next.hasNext())) {
                if (room.left == 0) {
                    room = next.next();
                    continue;
                }
                long taken = Math.min(left, room.left);
                boolean last = taken == left && portion.wanted() == portion.there().count();
                if (last) {
                    moves.all(drill, portion.spot(), room.spot, new Balance(taken, portion.there().variance(), 0));
                } else {
                    moves.some(drill, portion.spot(), room.spot, taken);
                }
                room.left -= taken;
                left -= taken;
            }
            if (left > 0) {
                places.add(portion.spot());
            }
        }
        if (places.isEmpty()) {
            places.add(kitBag.in(change));
        }
        return List.copyOf(places);
    }

    /** A pocket while it is being filled. */
    private static final class Room {
        static final Room NONE = new Room(Spot.FOUND, 0);

        final Spot spot;
        long left;

        Room(Spot spot, long left) {
            this.spot = spot;
            this.left = left;
        }
    }
}
