package org.glintery.activework;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.activework.ActiveWork;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Sitting;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.storage.Bag;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;
import org.glintery.testkit.ShopInFolder;
import org.openide.util.Lookup;

/** A real workshop in a folder with all features, and the steps that the tests of the bench share. */
public final class BenchShop extends ShopInFolder {

    public static final Drill T1 = Drill.of(Shape.ROUND, 280, "own", "T1");
    public static final Drill T2 = Drill.of(Shape.ROUND, 280, "own", "T2");
    public static final LocalDate TODAY = LocalDate.of(2025, 5, 2);
    public static final About MAY = About.on(TODAY);

    private BenchShop(Workshop workshop) {
        super(workshop);
    }

    public static BenchShop at(Path folder) {
        return new BenchShop(made(folder));
    }

    /** The same workshop, closed and opened again. */
    public BenchShop reopened() {
        Path folder = workshop().folder();
        workshop().close();
        return new BenchShop(
                Lookup.getDefault().lookup(Workshops.class).open(folder).orThrow());
    }

    public ActiveWork bench() {
        return workshop().find(ActiveWork.class).orElseThrow();
    }

    /** The bench of this workshop while some features are switched off. */
    ActiveWork benchWithout(Class<?>... services) {
        Set<Class<?>> off = Set.of(services);
        Workshop lessened = (Workshop) Proxy.newProxyInstance(
                Workshop.class.getClassLoader(), new Class<?>[] {Workshop.class}, (proxy, method, arguments) -> {
                    if (method.getName().equals("find") && off.contains((Class<?>) arguments[0])) {
                        return Optional.empty();
                    }
                    try {
                        return method.invoke(workshop(), arguments);
                    } catch (InvocationTargetException e) {
                        throw e.getCause();
                    }
                });
        return new ComputedActiveWork(lessened);
    }

    public static LegendLine line(String symbol, Drill drill, long needed, long supplied) {
        return new LegendLine(symbol, drill, Optional.of(needed), Amount.counted(supplied), Optional.empty(), Map.of());
    }

    public static LegendLine uncounted(String symbol, Drill drill) {
        return new LegendLine(symbol, drill, Optional.empty(), Amount.unknown(), Optional.empty(), Map.of());
    }

    public UUID piece(String title, Standing standing, LegendLine... legend) {
        return add(Piece.titled(title, standing), legend);
    }

    /** A piece covered in full, of so many cells; worked in sections, where there are any. */
    public UUID canvas(String title, int columns, int rows, Optional<Integer> sections) {
        Canvas cells = new Canvas(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(columns),
                Optional.of(rows));
        return add(piece(title, Coverage.FULL, cells, sections));
    }

    public UUID inSections(String title, int sections) {
        return add(piece(title, Coverage.NOT_SAID, Canvas.NOT_SAID, Optional.of(sections)));
    }

    private static Piece piece(String title, Coverage coverage, Canvas canvas, Optional<Integer> sections) {
        return new Piece(
                title,
                Optional.empty(),
                Optional.empty(),
                Standing.SHELVED,
                Optional.empty(),
                coverage,
                Optional.empty(),
                canvas,
                sections,
                List.of(),
                Optional.empty(),
                "");
    }

    private UUID add(Piece piece, LegendLine... legend) {
        UUID id = UUID.randomUUID();
        Stash stash = workshop().find(Stash.class).orElseThrow();
        apply(stash.addPiece(view(), id, piece, List.of(legend)));
        return id;
    }

    public static Sitting sitting(UUID piece, About day, Laid laid) {
        return new Sitting(
                piece, day, Optional.empty(), Optional.empty(), Optional.empty(), 0, laid, Optional.empty(), "");
    }

    public static Laid bySymbol(Map<String, Long> counts) {
        return new Laid(Optional.empty(), Optional.empty(), Optional.empty(), counts);
    }

    /** Sits and gives the sitting's id. */
    public UUID sit(UUID piece, About day, Laid laid) {
        UUID id = UUID.randomUUID();
        apply(bench().sit(view(), id, sitting(piece, day, laid)));
        return id;
    }

    /** A sitting as it may stand in an older workshop(): nothing is asked of it. */
    public UUID keptSitting(UUID piece, About day, Laid laid) {
        UUID id = UUID.randomUUID();
        apply(Result.ok(ChangeSet.named("An older sitting")
                .create(Sitting.TYPE, id, sitting(piece, day, laid))
                .build()));
        return id;
    }

    public Piece pieceOf(UUID id) {
        return view().find(Piece.TYPE, id).orElseThrow().value();
    }

    public Spot bagOf(UUID piece) {
        return view().all(Bag.TYPE).stream()
                .filter(bag -> bag.value().ofPiece().equals(Optional.of(piece)))
                .map(bag -> (Spot) new Spot.InBag(bag.id()))
                .findFirst()
                .orElseThrow();
    }

    public long count(Spot spot, Drill drill) {
        return view().balance(spot, drill).count();
    }
}
