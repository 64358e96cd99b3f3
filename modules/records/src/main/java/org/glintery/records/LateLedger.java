package org.glintery.records;

import java.sql.SQLException;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.glintery.api.GlinteryException;

/**
 * The ledger of an open workshop. It is read when it is first needed, for a balance or a change: the shelves are shown
 * sooner so, and a verb that only looks at documents never waits for it. Any thread.
 */
final class LateLedger {
    private static final Logger LOG = Logger.getLogger(LateLedger.class.getName());

    private final WriterThread writer;
    private final CompletableFuture<Booked> booked = new CompletableFuture<>();
    private boolean needed;
    private volatile Optional<ChangeWriter> changes = Optional.empty();

    LateLedger(WriterThread writer) {
        this.writer = writer;
    }

    /** What reading gives. */
    record Read(Booked booked, ChangeWriter changes) {}

    /** Reads the ledger on the writer thread. */
    interface Reader {
        Read read() throws SQLException;
    }

    /** Has it read before whatever is handed to the writer from now on. */
    synchronized void need(Reader reader) {
        if (!needed) {
            needed = true;
            try {
                writer.begin(() -> read(reader));
            } catch (WriterThread.ClosedException e) {
                booked.completeExceptionally(e);
            }
        }
    }

    private void read(Reader reader) {
        try {
            Read read = reader.read();
            changes = Optional.of(read.changes());
            booked.complete(read.booked());
        } catch (SQLException | RuntimeException | Error e) { // damage can show itself in any way
            LOG.log(Level.WARNING, "the ledger could not be read", e);
            booked.completeExceptionally(e);
        }
    }

    /** Waits for what was asked for. @throws GlinteryException when it can't be read, or was not before closing */
    Booked booked() {
        try {
            return booked.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof WriterThread.ClosedException closed) {
                throw closed;
            }
            throw new GlinteryException("the ledger could not be read", e.getCause());
        }
    }

    /** What makes changes; empty before the ledger is read, and for good when it can't be. */
    Optional<ChangeWriter> changes() {
        return changes;
    }
}
