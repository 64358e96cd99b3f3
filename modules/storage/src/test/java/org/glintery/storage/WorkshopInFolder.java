package org.glintery.storage;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction.Movement;
import org.glintery.api.ledger.Shape;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.Bag;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.Pocket;
import org.glintery.api.storage.Storage;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Reservation;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.ShopInFolder;

/** A real workshop in a folder, with a piece and its kit's bag as the stash would leave them. */
public final class WorkshopInFolder extends ShopInFolder {

    public static final About MAY = About.on(LocalDate.of(2025, 5, 2));

    private final Storage storage = new ComputedStorage();

    private WorkshopInFolder(Workshop workshop) {
        super(workshop);
    }

    public static WorkshopInFolder at(Path folder) {
        return new WorkshopInFolder(made(folder));
    }

    public static Drill drill(int number) {
        return Drill.of(Shape.ROUND, 280, "own", "T" + number);
    }

    public Storage storage() {
        return storage;
    }

    /** A shelved piece with symbols A, B ... for drills T1, T2 ..., each with so many in the bag of the kit. */
    public UUID piece(String title, long... counts) {
        Amount[] amounts = new Amount[counts.length];
        for (int i = 0; i < counts.length; i++) {
            amounts[i] = Amount.counted(counts[i]);
        }
        return piece(title, amounts);
    }

    public UUID piece(String title, Amount... amounts) {
        UUID piece = UUID.randomUUID();
        UUID bag = UUID.randomUUID();
        ChangeSet.Builder change = ChangeSet.named("Shelve " + title);
        change.create(Piece.TYPE, piece, Piece.titled(title, Standing.SHELVED));
        change.create(Bag.TYPE, bag, new Bag(title, Optional.empty(), Optional.of(piece), Optional.empty()));
        List<LegendLine> lines = new ArrayList<>();
        for (int i = 0; i < amounts.length; i++) {
            Drill drill = drill(i + 1);
            lines.add(new LegendLine(
                    String.valueOf((char) ('A' + i)),
                    drill,
                    amounts[i].count(),
                    amounts[i],
                    Optional.empty(),
                    Map.of()));
            if (amounts[i].count().orElse(1L) > 0) {
                change.post(Movement.of(
                        UUID.randomUUID(), drill, Spot.SUPPLIER, new Spot.InBag(bag), amounts[i], "came with it"));
            }
            if (amounts[i].count().orElse(0L) > 0) {
                change.create(
                        Reservation.TYPE,
                        Reservation.idForPiece(piece, drill),
                        new Reservation(
                                drill,
                                amounts[i].count().orElseThrow(),
                                Reservation.FOR_PIECE,
                                piece,
                                Optional.empty()));
            }
        }
        change.create(Legend.TYPE, piece, Legend.of(lines));
        apply(Result.ok(change.build()));
        return piece;
    }

    public UUID holder(String name, int columns, Optional<Long> capacity) {
        UUID id = UUID.randomUUID();
        apply(storage.addHolder(view(), id, Holder.grid(name, 1, columns, capacity)));
        return id;
    }

    public Spot pocket(UUID holder, int index) {
        Pocket pocket =
                view().find(Holder.TYPE, holder).orElseThrow().value().pockets().get(index);
        return new Spot.InPocket(holder, pocket.id());
    }

    public List<String> kitUp(UUID piece, UUID holder) {
        return apply(storage.planKitUp(view(), piece, holder, Optional.of(MAY)).then(plan -> Result.ok(plan.change())));
    }

    public List<String> kitDown(UUID piece, long repair) {
        Result<Storage.KitDownPlan> plan = storage.planKitDown(view(), piece, repair, Optional.of(MAY));
        return apply(plan.then(p -> Result.ok(p.change())));
    }

    /** The piece is made: what the stash does of it that matters here. */
    public void make(UUID piece) {
        Stored<Piece> stored = view().find(Piece.TYPE, piece).orElseThrow();
        ChangeSet.Builder change = ChangeSet.named("Make it")
                .replace(Piece.TYPE, stored, stored.value().with(Standing.MADE, Optional.of(MAY)));
        view().all(Reservation.TYPE).stream()
                .filter(one -> one.value().forId().equals(piece))
                .forEach(one -> change.remove(Reservation.TYPE.ref(one.id())));
        apply(Result.ok(change.build()));
    }

    public void move(Drill drill, Spot from, Spot to, long count) {
        apply(Result.ok(ChangeSet.named("Move")
                .post(Movement.of(UUID.randomUUID(), drill, from, to, Amount.counted(count), ""))
                .build()));
    }

    public Spot bag(String name) {
        UUID id = UUID.randomUUID();
        apply(Result.ok(ChangeSet.named("Make a bag")
                .create(Bag.TYPE, id, Bag.named(name))
                .build()));
        return new Spot.InBag(id);
    }

    public Spot bagNamed(String name) {
        List<Stored<Bag>> named = view().all(Bag.TYPE).stream()
                .filter(bag -> bag.value().name().equals(name))
                .toList();
        assertThat(named).hasSize(1);
        return new Spot.InBag(named.get(0).id());
    }

    public long count(Spot spot, Drill drill) {
        return view().balance(spot, drill).count();
    }
}
