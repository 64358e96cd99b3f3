package org.glintery.workbench.desk;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.SwingUtilities;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.glintery.workbench.host.Deadline;
import org.glintery.workbench.host.ForeignCall;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** The desk of one open workshop. Changes are made one after another on a thread of their own. */
public final class WorkshopDesk implements Desk {
    private static final Logger LOG = Logger.getLogger(WorkshopDesk.class.getName());

    /** Longer than any change of ours takes; an add-on that hangs must not keep the application from ending. */
    private static final long PATIENCE_S = 20;

    private final Workshop workshop;
    private final Clock clock;
    private final Speech speech;
    private final Consumer<UUID> pieceOpener;
    private final ExecutorService changes = single("Changes");
    private final ExecutorService reckoning = Executors.newCachedThreadPool(work -> named(work, "Reckoning"));
    private final List<Runnable> lastThings = new CopyOnWriteArrayList<>();
    private final ReentrantLock gate = new ReentrantLock();
    private boolean closed;

    public WorkshopDesk(Workshop workshop, Clock clock, Speech speech, Consumer<UUID> pieceOpener) {
        this.workshop = workshop;
        this.clock = clock;
        this.speech = speech;
        this.pieceOpener = pieceOpener;
    }

    @Override
    public Workshop workshop() {
        return workshop;
    }

    @Override
    public Clock clock() {
        return clock;
    }

    @Override
    public void change(Function<View, Result<ChangeSet>> build, Consumer<Applied> then) {
        work(build, () -> built(build).then(this::applied), then);
    }

    /** Built apart from the thread of changes, on which everyone waits, and dropped when it takes too long. */
    private Result<ChangeSet> built(Function<View, Result<ChangeSet>> build) {
        var building = CompletableFuture.supplyAsync(() -> build.apply(workshop.view()), reckoning);
        return Deadline.set(building, ForeignCall.DEADLINE_MS, workshop::isReading)
                .join();
    }

    /** Does something on the thread of changes, such as undo, and tells what came of it. Event thread. */
    public void work(Supplier<Result<Applied>> work, Consumer<Applied> then) {
        work(work, work, then);
    }

    @Messages(
            "WorkshopDesk.closed=The workshop was closed before this was written. Nothing was changed; open it again and do it once more.")
    private void work(Object whose, Supplier<Result<Applied>> work, Consumer<Applied> then) {
        try {
            CompletableFuture.supplyAsync(work, changes)
                    .whenCompleteAsync(
                            (result, trouble) -> tell(whose, result, trouble, then), SwingUtilities::invokeLater);
        } catch (RejectedExecutionException e) { // the workshop was closed meanwhile
            LOG.log(Level.INFO, "A change came after the workshop was closed and was not made", e);
            speech.refuse(new Refusal("closed", Bundle.WorkshopDesk_closed()));
        }
    }

    private Result<Applied> applied(ChangeSet change) {
        return change.operations().isEmpty() ? Result.refused(NOTHING, "") : workshop.apply(change);
    }

    private static final String NOTHING = "nothing-to-change";

    private void tell(Object whose, Result<Applied> result, Throwable trouble, Consumer<Applied> then) {
        if (trouble != null) {
            fault(whose, trouble);
        } else if (result instanceof Result.Ok<Applied> ok) {
            if (ok.warnings().isEmpty()) {
                speech.goOn();
            } else {
                speech.warn(String.join("\n", ok.warnings()));
            }
            then.accept(ok.value());
        } else if (result instanceof Result.Refused<Applied> no
                && !no.refusal().code().equals(NOTHING)) {
            speech.refuse(no.refusal());
        }
    }

    @Messages({
        "# {0} - module",
        "WorkshopDesk.fault=That did not work because of a mistake in {0}. Nothing was changed, and a note of it was written to the log.",
        "# {0} - module",
        "WorkshopDesk.slow={0} took longer than five seconds over a change, so the change was dropped. Nothing was changed.",
        "WorkshopDesk.us=Glintery"
    })
    private void fault(Object whose, Throwable trouble) {
        LOG.log(
                Level.WARNING,
                "A change or a reckoning failed: " + whose.getClass().getName(),
                trouble);
        String owner = ForeignCall.ownerOf(whose).orElseGet(Bundle::WorkshopDesk_us);
        boolean slow = trouble instanceof TimeoutException || trouble.getCause() instanceof TimeoutException;
        speech.warn(slow ? Bundle.WorkshopDesk_slow(owner) : Bundle.WorkshopDesk_fault(owner));
    }

    @Override
    public <T> void compute(Function<View, T> work, Consumer<T> show) {
        try {
            CompletableFuture.supplyAsync(() -> work.apply(workshop.view()), reckoning)
                    .whenCompleteAsync(
                            (value, trouble) -> {
                                if (trouble == null) {
                                    show.accept(value);
                                } else {
                                    fault(work, trouble);
                                }
                            },
                            SwingUtilities::invokeLater);
        } catch (RejectedExecutionException e) { // closed meanwhile, and with it whatever would have shown this
            LOG.log(Level.FINE, "Nothing is reckoned any more", e);
        }
    }

    @Override
    public void openPiece(UUID piece) {
        pieceOpener.accept(piece);
    }

    @Override
    public void say(String sentence) {
        speech.say(sentence);
    }

    /** Says that something was not done. Event thread. */
    public void refuse(Refusal refusal) {
        speech.refuse(refusal);
    }

    /**
     * Does work of ours that the workshop may not be closed under, such as copying it; one after another. Empty when it is
     * closed already. Disk; not on the event thread.
     */
    public <T> Optional<T> whileOpen(Supplier<T> work) {
        gate.lock();
        try {
            return closed ? Optional.empty() : Optional.of(work.get());
        } finally {
            gate.unlock();
        }
    }

    /** @param last done when all changes are made, before the workshop is closed */
    public void beforeClosing(Runnable last) {
        lastThings.add(last);
    }

    /** Finishes what is under way and closes the workshop. Disk; not on the event thread. */
    public void close() {
        changes.shutdown(); // those that wait are still built and made
        try {
            if (!changes.awaitTermination(PATIENCE_S, TimeUnit.SECONDS)) {
                LOG.warning("Changes were still under way when the workshop was closed");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        gate.lock();
        try {
            lastThings.forEach(Runnable::run);
        } finally {
            lastThings.clear();
            closed = true;
            reckoning.shutdown();
            workshop.close();
            gate.unlock();
        }
    }

    private static ExecutorService single(String name) {
        return Executors.newSingleThreadExecutor(work -> named(work, name));
    }

    private static Thread named(Runnable work, String name) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        return thread;
    }
}
