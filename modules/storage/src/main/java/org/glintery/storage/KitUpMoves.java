package org.glintery.storage;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Precondition;
import org.glintery.api.workshop.View;

/** Moves one drill after another from its bags into the pockets it was dealt. One thread. */
final class KitUpMoves {

    private final View view;
    private final ChangeSet.Builder change;
    private final HandMoves moves;
    private final KitBag kitBag;

    KitUpMoves(View view, ChangeSet.Builder change, HandMoves moves, KitBag kitBag) {
        this.view = view;
        this.change = change;
        this.moves = moves;
        this.kitBag = kitBag;
    }

    /**
     * Fills the rooms in order; without any, the drill stays in its bags. Gives every place the drill is in then.
     *
     * @param rooms pockets with what each takes
     */
    List<Spot> place(Drill drill, List<DrillSources.Portion> portions, List<Room> rooms) {
        portions.forEach(portion -> change.require(new Precondition.BalanceAt(portion.spot(), drill, portion.there())));
        if (rooms.isEmpty()) {
            return portions.isEmpty()
                    ? List.of(kitBag.in(change))
                    : portions.stream().map(DrillSources.Portion::spot).toList();
        }
        rooms.forEach(this::pinEmpty);
        Deque<Room> left = new ArrayDeque<>(rooms);
        for (DrillSources.Portion portion : portions) {
            if (portion.own() && portion.there().uncounted() > 0) {
                moves.all(
                        drill,
                        portion.spot(),
                        rooms.get(0).spot(),
                        new Balance(0, 0, portion.there().uncounted()));
            }
            pour(drill, portion, left);
        }
        return rooms.stream().map(Room::spot).toList();
    }

    /** A pocket that was emptied by hand is empty for sure once others are put into it. */
    private void pinEmpty(Room room) {
        view.contents(room.spot()).forEach((drill, there) -> {
            change.require(new Precondition.BalanceAt(room.spot(), drill, there));
            moves.pinEmpty(drill, room.spot());
        });
    }

    private void pour(Drill drill, DrillSources.Portion portion, Deque<Room> rooms) {
        boolean whole = portion.wanted() == portion.there().count()
                && (portion.own() || portion.there().uncounted() == 0);
        long left = portion.wanted();
        while (left > 0) {
            Room room = rooms.pop();
            long taken = Math.min(left, room.takes());
            if (whole && taken == left) {
                moves.all(
                        drill,
                        portion.spot(),
                        room.spot(),
                        new Balance(taken, portion.there().variance(), 0));
            } else {
                moves.some(drill, portion.spot(), room.spot(), taken);
            }
            left -= taken;
            if (taken < room.takes()) {
                rooms.push(new Room(room.spot(), room.takes() - taken));
            }
        }
    }

    /** A pocket with the drills that it is to take. */
    record Room(Spot spot, long takes) {}
}
