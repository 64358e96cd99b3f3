package org.glintery.records;

import java.sql.SQLException;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CompletionStage;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.glintery.api.GlinteryException;
import org.glintery.api.OffTheEventThread;
import org.glintery.api.Result;
import org.glintery.api.workshop.Applied;

/**
 * The ledger of an open workshop. It is read when it is first needed, for a balance or a change: the shelves are shown
 * sooner so, and a verb that only looks at documents never waits for it. Whoever goes to the writer through here finds it
 * read. Any thread.
 */
final class LateLedger {
    private static final Logger LOG = Logger.getLogger(LateLedger.class.getName());

    private final WriterThread writer;
    private final Reader reader;
    private volatile CompletableFuture<Read> reading = new CompletableFuture<>();
    private boolean asked;

    LateLedger(WriterThread writer, Reader reader) {
        this.writer = writer;
        this.reader = reader;
    }

    /** What reading gives. */
    record Read(Booked booked, ChangeWriter changes) {}

    /** Reads the ledger on the writer thread. */
    interface Reader {
        Read read() throws SQLException;
    }

    /** Done on the writer thread. */
    interface Work<R> {
        R with(ChangeWriter changes) throws Exception;
    }

    /** Thrown when the ledger is damaged. */
    static final class UnreadableException extends GlinteryException {
        private static final long serialVersionUID = 1L;

        UnreadableException(Throwable cause) {
            super("the ledger could not be read", cause);
        }
    }

    /**
     * Has it read before whatever is handed to the writer from now on. What failed for want of memory is tried again;
     * damage stays.
     */
    private synchronized CompletableFuture<Read> needed() {
        if (!asked || failedForNow()) {
            var mine = new CompletableFuture<Read>();
            writer.begin(() -> read(mine));
            reading = mine;
            asked = true;
        }
        return reading;
    }

    private boolean failedForNow() {
        return reading.isCompletedExceptionally()
                && reading.handle((read, trouble) -> trouble).join() instanceof VirtualMachineError;
    }

    private void read(CompletableFuture<Read> into) {
        try {
            into.complete(reader.read());
        } catch (SQLException | RuntimeException | Error e) { // damage can show itself in any way
            LOG.log(Level.WARNING, "the ledger could not be read", e);
            into.completeExceptionally(e);
        }
    }

    /**
     * Waits for it, off the event thread.
     *
     * @throws UnreadableException when it is damaged
     * @throws WriterThread.ClosedException when it was not needed before closing
     */
    Booked booked() {
        CompletableFuture<Read> known = isRead() ? reading : needed();
        if (!known.isDone()) {
            OffTheEventThread.check();
        }
        return ready(known).booked();
    }

    private static Read ready(CompletableFuture<Read> known) {
        try {
            return known.join();
        } catch (CompletionException e) {
            throw new UnreadableException(e.getCause());
        }
    }

    /** Whether it is being read at this moment. */
    boolean isBeingRead() {
        return asked() && !reading.isDone();
    }

    private synchronized boolean asked() {
        return asked;
    }

    private boolean isRead() {
        CompletableFuture<Read> known = reading;
        return known.isDone() && !known.isCompletedExceptionally();
    }

    /** What makes changes; empty before the ledger is read, and when it can't be. */
    Optional<ChangeWriter> changes() {
        return isRead() ? Optional.of(reading.join().changes()) : Optional.empty();
    }

    /** Waits for work on the writer thread. @throws UnreadableException when the ledger is damaged */
    <R> R call(Work<R> work) {
        CompletableFuture<Read> known = needed();
        return writer.call(() -> work.with(ready(known).changes()));
    }

    /** The same; damage and a closed workshop are refusals. */
    Result<Applied> change(Function<ChangeWriter, Result<Applied>> work) {
        try {
            return call(work::apply);
        } catch (UnreadableException e) {
            return Result.refused(Refusals.ledgerUnreadable());
        } catch (WriterThread.ClosedException e) {
            return Result.refused(Refusals.closed());
        }
    }

    /** The same without waiting for it. */
    CompletionStage<Result<Applied>> submit(Function<ChangeWriter, Result<Applied>> work) {
        try {
            CompletableFuture<Read> known = needed();
            return writer.hand(() -> known.isCompletedExceptionally()
                    ? Result.refused(Refusals.ledgerUnreadable())
                    : work.apply(ready(known).changes()));
        } catch (WriterThread.ClosedException e) {
            return CompletableFuture.completedFuture(Result.refused(Refusals.closed()));
        }
    }
}
