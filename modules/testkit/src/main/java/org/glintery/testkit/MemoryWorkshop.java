package org.glintery.testkit;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.glintery.api.MalformedException;
import org.glintery.api.OffTheEventThread;
import org.glintery.api.Result;
import org.glintery.api.ledger.LedgerEntry;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Changed;
import org.glintery.api.workshop.DemoWorkshop;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.HistoryLine;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;

/**
 * A workshop without a disk, for unit tests: as the real one in all that changes, views, undo and the ledger are about, by
 * code of its own that is plain and slow. It has no files: what needs one is refused with {@code no-files}. Close it. Any
 * thread.
 */
public final class MemoryWorkshop implements Workshop {
    private static final Set<MemoryWorkshop> OPEN = ConcurrentHashMap.newKeySet();
    private static final Path NOWHERE = Path.of("workshop-in-memory");

    private final Clock clock;
    private final MemoryLedger ledger = new MemoryLedger();
    private final MemoryNews news = new MemoryNews();
    private final MemoryHistory history = new MemoryHistory();
    private final Map<Class<?>, Object> services = new ConcurrentHashMap<>();
    private MemoryState state = MemoryState.empty(ledger.state());
    private MemoryView view;
    private boolean closed;

    public MemoryWorkshop(Clock clock) {
        this.clock = clock;
        view = new MemoryView(state, LocalDate.now(clock));
        OPEN.add(this);
    }

    /** An empty one, with the clock of this computer. */
    public MemoryWorkshop() {
        this(Clock.systemDefaultZone());
    }

    /**
     * One filled with the demo; the same seed gives the same demo.
     *
     * @throws IllegalStateException when the demo module is not on the class path
     */
    public static MemoryWorkshop withDemo(long seed) {
        DemoWorkshop demo = Installed.one(DemoWorkshop.class)
                .orElseThrow(
                        () -> new IllegalStateException("for the demo, put the demo module on the test's class path"));
        MemoryWorkshop workshop = new MemoryWorkshop();
        demo.fill(workshop, seed).orThrow();
        return workshop;
    }

    /** Those that were opened and not closed yet, in the whole Java process. */
    public static Collection<MemoryWorkshop> open() {
        return List.copyOf(OPEN);
    }

    /** Lets it have a service, such as a fake, ahead of what factories bring. */
    public <S> MemoryWorkshop having(Class<S> service, S instance) {
        services.put(service, instance);
        return this;
    }

    /** How many listen for changes now. */
    public int listeners() {
        return news.listeners();
    }

    @Override
    public Path folder() {
        return NOWHERE;
    }

    @Override
    public synchronized View view() {
        LocalDate today = LocalDate.now(clock);
        if (!view.day().equals(today)) {
            view = new MemoryView(state, today);
        }
        return view;
    }

    @Override
    public synchronized Result<Applied> apply(ChangeSet change) {
        OffTheEventThread.check();
        if (closed) {
            return refused("closed");
        }
        if (history.knows(change.id())) {
            return refused("change-repeated");
        }
        try {
            return made(change);
        } catch (RefusedException e) {
            return refused(e.code());
        } catch (MalformedException e) {
            return Result.refused("malformed", "This can't be kept as it is: " + e.getMessage() + ".");
        }
    }

    private Result<Applied> made(ChangeSet change) throws RefusedException {
        MemoryState draft = new ChangeInMemory(state).apply(change);
        int standing = ledger.standing();
        List<LedgerEntry> booked = ledger.apply(change, LocalDate.now(clock), clock.instant());
        boolean touchedLedger = ledger.standing() > standing;
        if (draft == state && !touchedLedger) {
            return Result.ok(new Applied(change.id(), state.revision()));
        }
        MemoryState after = draft.next(ledger.state());
        var step = new MemoryHistory.Step(change.id(), change.sentence(), state, after, touchedLedger, booked);
        history.done(step, after.revision(), clock.instant());
        return committed(step, after);
    }

    private Result<Applied> committed(MemoryHistory.Step step, MemoryState after) {
        Set<DocRef> touched = after.documents().differing(state.documents());
        state = after;
        view = new MemoryView(state, LocalDate.now(clock));
        news.tell(new Changed(state.revision(), touched, !step.booked().isEmpty()));
        return Result.ok(new Applied(step.change(), state.revision()));
    }

    @Override
    public CompletionStage<Result<Applied>> submit(ChangeSet change) {
        return CompletableFuture.supplyAsync(() -> apply(change), news.background());
    }

    @Override
    public synchronized Result<Applied> undo() {
        OffTheEventThread.check();
        if (closed) {
            return refused("closed");
        }
        if (history.toUndo().isEmpty()) {
            return refused("nothing-to-undo");
        }
        MemoryHistory.Step inverse = inverted(history.toUndo().get(), true);
        MemoryState after = state.withContentsOf(inverse.before(), ledger.state());
        history.undone(inverse, after.revision(), clock.instant());
        return committed(inverse, after);
    }

    @Override
    public synchronized Result<Applied> redo() {
        OffTheEventThread.check();
        if (closed) {
            return refused("closed");
        }
        if (history.toRedo().isEmpty()) {
            return refused("nothing-to-redo");
        }
        MemoryHistory.Step again = inverted(history.toRedo().get(), false);
        MemoryState after = state.withContentsOf(again.after(), ledger.state());
        history.redone(again, after.revision(), clock.instant());
        return committed(again, after);
    }

    private MemoryHistory.Step inverted(MemoryHistory.Step step, boolean undo) {
        UUID change = UUID.randomUUID();
        List<LedgerEntry> booked =
                step.touchedLedger() ? ledger.invert(undo, step.booked(), clock.instant(), change) : List.of();
        return step.by(change, booked);
    }

    @Override
    public synchronized Optional<String> undoable() {
        return history.toUndo().map(MemoryHistory.Step::sentence);
    }

    @Override
    public synchronized Optional<String> redoable() {
        return history.toRedo().map(MemoryHistory.Step::sentence);
    }

    @Override
    public synchronized List<HistoryLine> history(int most) {
        OffTheEventThread.check();
        return history.newest(most);
    }

    @Override
    public void ledger(LedgerQuery query, Consumer<LedgerEntry> each) {
        OffTheEventThread.check();
        List<LedgerEntry> entries;
        synchronized (this) {
            entries = ledger.entries(query);
        }
        entries.forEach(each);
    }

    @Override
    public boolean isReading() {
        return false;
    }

    @Override
    public synchronized Set<UUID> booked(Collection<UUID> ids) {
        OffTheEventThread.check();
        Set<UUID> asked = Set.copyOf(ids);
        return ledger.entries(LedgerQuery.all()).stream()
                .map(one -> one.action().id())
                .filter(asked::contains)
                .collect(Collectors.toSet());
    }

    @Override
    public synchronized Optional<byte[]> blob(String hash) {
        OffTheEventThread.check();
        return Optional.ofNullable(state.blobs().get(hash)).map(Blob::bytes);
    }

    @Override
    public Registration listen(Consumer<Changed> listener) {
        return news.listen(listener);
    }

    @Override
    public <S> Optional<S> find(Class<S> service) {
        if (!services.containsKey(service)) {
            Installed.all(ServiceFactory.class).stream()
                    .filter(factory -> factory.service() == service)
                    .findFirst()
                    .ifPresent(factory -> services.putIfAbsent(service, factory.create(this)));
        }
        return Optional.ofNullable(service.cast(services.get(service)));
    }

    /** Counts. Nothing here lies on a disk, where it could be damaged. */
    @Override
    public synchronized CheckReport check() {
        OffTheEventThread.check();
        return new CheckReport(
                state.documents().present().count(),
                ledger.size(),
                state.blobs().size(),
                List.of());
    }

    @Override
    public Result<CopyReport> backup(Path file) {
        return noFiles();
    }

    @Override
    public Result<CopyReport> exportJson(Path file) {
        return noFiles();
    }

    @Override
    public Result<CopyReport> importJson(Path file) {
        return noFiles();
    }

    @Override
    public Optional<BackedUp> lastBackup() {
        OffTheEventThread.check();
        return Optional.empty();
    }

    private static Result<CopyReport> noFiles() {
        OffTheEventThread.check();
        return Result.refused("no-files", "This workshop is in memory only and has no files. Nothing was changed.");
    }

    private static <T> Result<T> refused(String code) {
        return Result.refused(code, "Refused: " + code.replace('-', ' ') + ". Nothing was changed.");
    }

    @Override
    public synchronized void close() {
        if (!closed) {
            closed = true;
            OPEN.remove(this);
            news.close();
        }
    }
}
