package org.glintery.workbench.desk;

import java.time.Clock;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.SwingUtilities;
import org.glintery.api.Result;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
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
        work(() -> build.apply(workshop.view()).then(this::applied), then);
    }

    /** Does something on the thread of changes, such as undo, and tells what came of it. Event thread. */
    public void work(java.util.function.Supplier<Result<Applied>> work, Consumer<Applied> then) {
        if (changes.isShutdown()) {
            LOG.warning("A change came after the workshop was closed and was not made");
            return;
        }
        CompletableFuture.supplyAsync(work, changes)
                .whenCompleteAsync((result, trouble) -> tell(result, trouble, then), SwingUtilities::invokeLater);
    }

    private Result<Applied> applied(ChangeSet change) {
        return change.operations().isEmpty() ? Result.refused(NOTHING, "") : workshop.apply(change);
    }

    private static final String NOTHING = "nothing-to-change";

    private void tell(Result<Applied> result, Throwable trouble, Consumer<Applied> then) {
        if (trouble != null) {
            fault(trouble);
        } else if (result instanceof Result.Ok<Applied> ok) {
            ok.warnings().forEach(speech::warn);
            then.accept(ok.value());
        } else if (result instanceof Result.Refused<Applied> no
                && !no.refusal().code().equals(NOTHING)) {
            speech.refuse(no.refusal());
        }
    }

    @Messages(
            "WorkshopDesk.fault=That did not work because of a mistake in Glintery. Nothing was changed, and a note of it was written to the log.")
    private void fault(Throwable trouble) {
        LOG.log(Level.WARNING, "A change or a reckoning failed", trouble);
        speech.warn(Bundle.WorkshopDesk_fault());
    }

    @Override
    public <T> void compute(Function<View, T> work, Consumer<T> show) {
        CompletableFuture.supplyAsync(() -> work.apply(workshop.view()), reckoning)
                .whenCompleteAsync(
                        (value, trouble) -> {
                            if (trouble == null) {
                                show.accept(value);
                            } else {
                                fault(trouble);
                            }
                        },
                        SwingUtilities::invokeLater);
    }

    @Override
    public void openPiece(UUID piece) {
        pieceOpener.accept(piece);
    }

    @Override
    public void say(String sentence) {
        speech.say(sentence);
    }

    /** Finishes what is under way and closes the workshop. Disk; not on the event thread. */
    public void close() {
        changes.shutdown();
        reckoning.shutdown();
        try {
            if (!changes.awaitTermination(PATIENCE_S, TimeUnit.SECONDS)) {
                LOG.warning("Changes were still under way when the workshop was closed");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        workshop.close();
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
