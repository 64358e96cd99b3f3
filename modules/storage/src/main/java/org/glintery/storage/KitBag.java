package org.glintery.storage;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Piece;
import org.glintery.api.storage.Bag;
import org.glintery.api.storage.BagNames;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;

/** The bag of a piece's kit, made when there is none and something has to go into it. One thread. */
final class KitBag {

    private final View view;
    private final UUID piece;
    private final Piece value;
    private Optional<Spot> bag;

    KitBag(View view, UUID piece, Piece value, List<Spot> existing) {
        this.view = view;
        this.piece = piece;
        this.value = value;
        this.bag = existing.stream().findFirst();
    }

    Spot in(ChangeSet.Builder change) {
        if (bag.isEmpty()) {
            UUID id = UUID.randomUUID();
            change.create(
                    Bag.TYPE,
                    id,
                    new Bag(
                            new BagNames(view).free(value.title()),
                            value.keptAt(),
                            Optional.of(piece),
                            Optional.empty()));
            bag = Optional.of(new Spot.InBag(id));
        }
        return bag.get();
    }
}
