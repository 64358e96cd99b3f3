package org.glintery.testkit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.Shape;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Reservation;

/**
 * Seeded work for a ledger: single movements and batches, some with a bad line; reversals, counts, repeated ids with the
 * same and with other content; reservations made, changed and released. The same seed gives the same work. Not safe for
 * use by several threads.
 */
public final class LedgerWork {
    public static final List<Drill> DRILLS = List.of(
            Drill.of(Shape.SQUARE, 250, "own", "T1"),
            Drill.of(Shape.SQUARE, 250, "own", "T2"),
            Drill.of(Shape.ROUND, 280, "own", "T1"),
            Drill.of(Shape.ROUND, 280, "card", "4R2-K"));

    public static final List<Spot> SPOTS = List.of(
            new Spot.InBag(new UUID(1, 1)),
            new Spot.InBag(new UUID(1, 2)),
            new Spot.InPocket(new UUID(2, 1), new UUID(3, 1)),
            new Spot.InPocket(new UUID(2, 1), new UUID(3, 2)),
            new Spot.OnCanvas(new UUID(4, 1)),
            new Spot.OnCanvas(new UUID(4, 2)),
            Spot.SUPPLIER,
            new Spot.Boundary(Spot.Edge.SUPPLIER, Optional.of("shop: 100 %")),
            Spot.SWAPPED,
            Spot.LOST,
            Spot.FOUND);

    private static final int INSIDE = 6;

    private final SplittableRandom random;
    private final List<LedgerAction> said = new ArrayList<>();
    private final List<UUID> reservations = new ArrayList<>();

    public LedgerWork(long seed) {
        random = new SplittableRandom(seed);
    }

    /** How many actions the changes so far asked for. */
    public int actions() {
        return said.size();
    }

    /** True once in so many times: for what a test does between changes. */
    public boolean oneIn(int times) {
        return random.nextInt(times) == 0;
    }

    /** The next change. @param day from which reservations expire */
    public ChangeSet next(LocalDate day) {
        var change = ChangeSet.named("Step " + said.size());
        int steps = oneIn(3) ? 2 + random.nextInt(8) : 1;
        for (int step = 0; step < steps; step++) {
            if (oneIn(12)) {
                reserve(change, day);
            } else {
                change.post(remembered(action()));
            }
        }
        if (steps > 1 && oneIn(4)) {
            change.post(remembered(LedgerAction.Movement.of(
                    id(), drill(), inside(), Spot.LOST, Amount.counted(Amount.MOST), "more than can be there")));
        }
        return change.build(id());
    }

    private LedgerAction remembered(LedgerAction action) {
        said.add(action);
        return action;
    }

    private void reserve(ChangeSet.Builder change, LocalDate day) {
        if (!reservations.isEmpty() && oneIn(3)) {
            change.remove(Reservation.TYPE.ref(any(reservations)));
            return;
        }
        UUID id = reservations.isEmpty() || random.nextBoolean() ? id() : any(reservations);
        reservations.add(id);
        Optional<LocalDate> expires =
                random.nextBoolean() ? Optional.empty() : Optional.of(day.plusDays(random.nextInt(4)));
        change.put(
                Reservation.TYPE,
                id,
                new Reservation(drill(), 1 + random.nextInt(150), Reservation.FOR_PIECE, new UUID(4, 1), expires));
    }

    private LedgerAction action() {
        int kind = random.nextInt(100);
        if (kind < 12 && !said.isEmpty()) {
            UUID target = oneIn(25) ? id() : recent().id();
            return new LedgerAction.Reversal(id(), target, "taken back", Optional.empty(), Optional.empty());
        }
        if (kind < 20) {
            Spot spot = oneIn(20) ? Spot.SUPPLIER : inside();
            return new LedgerAction.Stocktake(
                    id(), drill(), spot, amount(), "counted", Optional.empty(), Optional.empty());
        }
        if (kind < 24 && !said.isEmpty()) {
            return recent();
        }
        if (kind < 27 && !said.isEmpty()) {
            return movement(recent().id());
        }
        return movement(id());
    }

    private LedgerAction movement(UUID id) {
        Spot from = random.nextInt(100) < 45 ? any(SPOTS.subList(INSIDE, SPOTS.size())) : inside();
        Spot to = from.isBoundary() ? inside() : any(SPOTS);
        return LedgerAction.Movement.of(id, drill(), from, to, amount(), oneIn(2) ? "moved" : "laid");
    }

    private Amount amount() {
        int kind = random.nextInt(100);
        long count = 1 + random.nextInt(kind < 50 ? 40 : 200);
        if (kind < 70) {
            return Amount.counted(count);
        }
        if (kind < 92) {
            return Amount.rough(count, random.nextInt(20));
        }
        if (kind < 98) {
            return Amount.unknown();
        }
        return kind == 98 ? Amount.counted(0) : Amount.rough(Amount.MOST, Amount.MOST);
    }

    private LedgerAction recent() {
        int back = random.nextInt(Math.min(said.size(), oneIn(4) ? said.size() : 20));
        return said.get(said.size() - 1 - back);
    }

    private Drill drill() {
        return any(DRILLS);
    }

    private Spot inside() {
        return any(SPOTS.subList(0, INSIDE));
    }

    private <T> T any(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private UUID id() {
        return new UUID(random.nextLong(), random.nextLong());
    }
}
