package org.glintery.demo;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.Bag;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;

/** Bags and movements, with ids from the seed. */
final class Booking {
    private final Seeded seeded;
    private final ChangeSet.Builder change;
    private final Set<String> names = new HashSet<>();

    Booking(Seeded seeded, ChangeSet.Builder change) {
        this.seeded = seeded;
        this.change = change;
    }

    Spot kitBag(PieceInMaking piece) {
        return bag(piece.told().title(), Optional.of(piece.id()), Optional.empty());
    }

    Spot repairPacket(PieceInMaking piece) {
        return bag("Repair packet of " + piece.told().title(), Optional.empty(), Optional.of(piece.id()));
    }

    Spot looseBag(String name) {
        return bag(name, Optional.empty(), Optional.empty());
    }

    private Spot bag(String wanted, Optional<UUID> ofPiece, Optional<UUID> repairFor) {
        UUID id = seeded.id();
        String name = wanted;
        for (int n = 2; !names.add(name); n++) {
            name = wanted + " " + n;
        }
        change.create(Bag.TYPE, id, new Bag(name, Optional.empty(), ofPiece, repairFor));
        return new Spot.InBag(id);
    }

    void move(Drill drill, Spot from, Spot to, long count, String reason, LocalDate on) {
        if (count > 0) {
            move(drill, from, to, Amount.counted(count), reason, on);
        }
    }

    void move(Drill drill, Spot from, Spot to, Amount amount, String reason, LocalDate on) {
        change.post(new LedgerAction.Movement(
                seeded.id(),
                drill,
                Optional.empty(),
                from,
                to,
                amount,
                reason,
                Optional.of(About.on(on)),
                Optional.empty()));
    }
}
