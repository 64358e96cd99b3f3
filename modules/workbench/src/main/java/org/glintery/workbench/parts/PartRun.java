package org.glintery.workbench.parts;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.glintery.api.workshop.View;
import org.glintery.workbench.host.Deadline;
import org.glintery.workbench.host.ForeignCall;
import org.glintery.workbench.host.TooSlowException;
import org.glintery.workbench.spi.ScreenPart;

/**
 * Runs a part: prepares in the background with a deadline, shows on the event thread, one run at a time; a call while
 * one is under way makes for one more. A part that throws or is too slow is set aside. No Swing.
 *
 * <p>All methods on the event thread.
 */
final class PartRun<M> {
    private final ScreenPart<M> part;
    private final Supplier<View> newest;
    private final Executor background;
    private final Executor eventThread;
    private final long deadlineMs;
    private final BooleanSupplier excused;
    private final Consumer<Throwable> setAside;
    private final Runnable back;
    private boolean running;
    private boolean again;
    private boolean aside;
    /** Whether it is aside for its slowness alone. */
    private boolean slow;

    /** @param excused whether the workshop keeps the part waiting */
    PartRun(
            ScreenPart<M> part,
            Supplier<View> newest,
            Executor background,
            Executor eventThread,
            long deadlineMs,
            BooleanSupplier excused,
            Consumer<Throwable> setAside,
            Runnable back) {
        this.part = part;
        this.newest = newest;
        this.background = background;
        this.eventThread = eventThread;
        this.deadlineMs = deadlineMs;
        this.excused = excused;
        this.setAside = setAside;
        this.back = back;
    }

    void refresh() {
        if (aside) {
            return;
        }
        if (running) {
            again = true;
            return;
        }
        running = true;
        again = false;
        var prepared = new CompletableFuture<M>();
        prepared.whenCompleteAsync(this::arrived, eventThread);
        background.execute(() -> prepare(prepared));
    }

    /** On a background thread. The deadline counts from here: waiting for a turn or for the ledger is not the part's fault. */
    private void prepare(CompletableFuture<M> prepared) {
        Deadline.set(prepared, deadlineMs, excused);
        try {
            M model = part.prepare(newest.get());
            if (!prepared.complete(model)) {
                eventThread.execute(() -> late(model));
            }
        } catch (RuntimeException | Error e) { // foreign code: told to whoever waits
            prepared.completeExceptionally(e);
        }
    }

    /** Sets the part aside for something that its host saw. */
    void stop() {
        aside = true;
        slow = false;
    }

    /** Gives a part that was set aside another try. */
    void takeBack() {
        aside = false;
        slow = false;
        refresh();
    }

    private void arrived(M model, Throwable trouble) {
        running = false;
        if (aside) {
            return;
        }
        if (trouble != null) {
            fail(trouble.getCause() == null ? trouble : trouble.getCause());
            return;
        }
        try {
            ForeignCall.make(part, () -> {
                part.show(model);
                return model;
            });
        } catch (RuntimeException | Error e) { // foreign code: whatever it throws is its own trouble
            fail(e);
            return;
        }
        if (again) {
            refresh();
        }
    }

    /** A part that was only slow, such as on a busy computer, comes back by itself. */
    private void late(M model) {
        if (slow) {
            aside = false;
            back.run();
            arrived(model, null);
        }
    }

    private void fail(Throwable trouble) {
        aside = true;
        slow = trouble instanceof TimeoutException;
        setAside.accept(trouble);
    }

    static boolean tookTooLong(Throwable trouble) {
        return trouble instanceof TimeoutException || trouble instanceof TooSlowException;
    }
}
