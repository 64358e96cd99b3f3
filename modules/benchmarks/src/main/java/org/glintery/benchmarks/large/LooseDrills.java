package org.glintery.benchmarks.large;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.LedgerAction.Movement;
import org.glintery.api.ledger.Shape;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.Bag;
import org.glintery.api.workshop.ChangeSet;

/** Drills bought by themselves, into bags of their own. */
final class LooseDrills {

    private static final int BAGS = 60;
    private static final int MOST_COUNT = 400;

    private final SplittableRandom random;
    private final Card card;
    private final List<UUID> bags = new ArrayList<>();

    LooseDrills(SplittableRandom random) {
        this.random = random;
        this.card = new Card(random.split());
    }

    ChangeSet bags() {
        ChangeSet.Builder change = ChangeSet.named("Label the loose bags");
        for (int i = 1; i <= BAGS; i++) {
            UUID id = id();
            bags.add(id);
            change.create(Bag.TYPE, id, new Bag("Loose " + i, Optional.empty(), Optional.empty(), Optional.empty()));
        }
        return change.build();
    }

    /** So many movements as one change. */
    ChangeSet bought(int movements) {
        ChangeSet.Builder change = ChangeSet.named("Book " + movements + " movements");
        for (int i = 0; i < movements; i++) {
            change.post(Movement.of(
                    id(),
                    card.drill(random.nextBoolean() ? Shape.ROUND : Shape.SQUARE),
                    Spot.SUPPLIER,
                    new Spot.InBag(bags.get(random.nextInt(bags.size()))),
                    Amount.counted(1 + random.nextInt(MOST_COUNT)),
                    "bought"));
        }
        return change.build();
    }

    private UUID id() {
        return new UUID(random.nextLong(), random.nextLong());
    }
}
