package org.glintery.storage;

import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Piece;
import org.glintery.api.storage.Bag;
import org.glintery.api.storage.BagNames;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** A few drills of every colour, kept with the piece for the day one pops off. One thread. */
final class RepairPacket {

    private final View view;
    private final UUID piece;
    private final Piece value;
    private final long drillsEach;
    private Optional<Spot> packet;

    RepairPacket(View view, UUID piece, Piece value, long drillsEach) {
        this.view = view;
        this.piece = piece;
        this.value = value;
        this.drillsEach = drillsEach;
        this.packet = view.all(Bag.TYPE).stream()
                .filter(bag -> bag.value().repairFor().filter(piece::equals).isPresent())
                .<Spot>map(bag -> new Spot.InBag(bag.id()))
                .findFirst();
    }

    /** Counts drills out of the heap into the packet; lowers the heap by what went. */
    void fill(Drill drill, Map<Spot, Balance> heap, ChangeSet.Builder change, HandMoves moves) {
        long left = drillsEach;
        for (Map.Entry<Spot, Balance> place : heap.entrySet()) {
            Balance there = place.getValue();
            long taken = Math.min(left, there.count());
            if (taken > 0) {
                moves.some(drill, place.getKey(), in(change), taken);
                place.setValue(there.plus(-taken, 0, 0));
                left -= taken;
            }
        }
    }

    @Messages({"# {0} - title", "RepairPacket.name=Repair packet of {0}"})
    private Spot in(ChangeSet.Builder change) {
        if (packet.isEmpty()) {
            UUID id = UUID.randomUUID();
            String name = new BagNames(view).free(Bundle.RepairPacket_name(value.title()));
            change.create(Bag.TYPE, id, new Bag(name, value.keptAt(), Optional.empty(), Optional.of(piece)));
            packet = Optional.of(new Spot.InBag(id));
        }
        return packet.get();
    }
}
