package org.glintery.stash;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
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
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.NewKit;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.storage.Bag;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.ShopInFolder;

/** A real workshop in a folder, with the steps that the tests of the stash share. */
public final class WorkshopInFolder extends ShopInFolder {

    public static final Drill T1 = Drill.of(Shape.ROUND, 280, "own", "T1");
    public static final Drill T2 = Drill.of(Shape.ROUND, 280, "own", "T2");
    public static final About MAY = About.on(LocalDate.of(2025, 5, 2));

    private final Stash stash = new ComputedStash();

    private WorkshopInFolder(Workshop workshop) {
        super(workshop);
    }

    public static WorkshopInFolder at(Path folder) {
        return new WorkshopInFolder(made(folder));
    }

    public Stash stash() {
        return stash;
    }

    /** Shelves a kit of one piece and gives the piece's id. */
    public UUID shelve(String title, LegendLine... lines) {
        UUID piece = UUID.randomUUID();
        apply(stash.shelve(view(), kit(piece, title, Standing.SHELVED, Optional.empty(), lines)));
        return piece;
    }

    public static NewKit kit(
            UUID piece, String title, Standing standing, Optional<String> source, LegendLine... lines) {
        Kit kit = new Kit(
                title,
                source,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "");
        NewKit.NewPiece only = new NewKit.NewPiece(piece, Piece.titled(title, standing), Legend.of(List.of(lines)));
        return new NewKit(UUID.randomUUID(), kit, List.of(only), Map.of(), List.of());
    }

    public static LegendLine line(String symbol, Drill drill, long needed, long supplied) {
        return new LegendLine(symbol, drill, Optional.of(needed), Amount.counted(supplied), Optional.empty(), Map.of());
    }

    public static LegendLine silent(String symbol, Drill drill) {
        return new LegendLine(symbol, drill, Optional.empty(), Amount.unknown(), Optional.empty(), Map.of());
    }

    public static LegendLine bags(String symbol, Drill drill, int bags) {
        return new LegendLine(symbol, drill, Optional.empty(), Amount.unknown(), Optional.of(bags), Map.of());
    }

    /** Makes a bag and fills it. */
    public Spot bag(String name, Drill drill, long count) {
        UUID id = UUID.randomUUID();
        Spot spot = new Spot.InBag(id);
        ChangeSet.Builder change = ChangeSet.named("Make a bag").create(Bag.TYPE, id, Bag.named(name));
        if (count > 0) {
            change.post(Movement.of(UUID.randomUUID(), drill, Spot.SUPPLIER, spot, Amount.counted(count), "bought"));
        }
        apply(Result.ok(change.build()));
        return spot;
    }

    /** The bag of that name. */
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
