package org.glintery.api.workshop;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CompletionStage;
import java.util.function.Consumer;
import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.ledger.LedgerEntry;

/**
 * The handle of one open workshop. Safe for use by several threads. Methods that read or write the disk
 * say so and throw {@link IllegalStateException} on the event thread.
 */
@Stable
public interface Workshop extends AutoCloseable {
    Path folder();

    View view();

    /**
     * Whether the ledger is being read at this moment. That is once after opening, when it is first needed: what asks about
     * drills or makes a change then waits for it. Any thread.
     */
    boolean isReading();

    /** Applies a change and returns once it is durable. Disk; not on the event thread. */
    Result<Applied> apply(ChangeSet change);

    /** Hands a change to the writer; completes on a background thread. Any thread. */
    CompletionStage<Result<Applied>> submit(ChangeSet change);

    /** Applies the inverse of the last change that stands. Disk. Refused if later work stands on it. */
    Result<Applied> undo();

    /** Applies again what was undone last. Disk. Refused once another change was made. */
    Result<Applied> redo();

    /** The sentence of what {@link #undo} would take back. */
    Optional<String> undoable();

    /** The sentence of what {@link #redo} would bring back. */
    Optional<String> redoable();

    /** The newest changes first. Disk. */
    List<HistoryLine> history(int most);

    /** Entries of the ledger, each handed over in recorded order on the calling thread. Disk. */
    void ledger(LedgerQuery query, Consumer<LedgerEntry> each);

    /** Those of these ids that entries of the ledger have, also entries that were reversed since. Disk. */
    Set<UUID> booked(Collection<UUID> ids);

    /** The bytes of a blob. Disk. */
    Optional<byte[]> blob(String hash);

    /**
     * Calls back after commits, in order, on a dispatcher thread, never the event thread, under no lock. What a listener
     * throws is named in the log and holds up nobody; one that takes longer than five seconds is named once, the others go
     * on without it, and it hears what it missed as one when it comes back. Closing the handle ends it.
     */
    Registration listen(Consumer<Changed> listener);

    /** A feature's service, when that feature is there. */
    <S> Optional<S> find(Class<S> service);

    /** Compares everything with everything: balances with the ledger, documents, pictures. Disk. */
    CheckReport check();

    /** Writes one file that can be read without us. Disk. Refused if the file exists or can't be written. */
    Result<CopyReport> backup(Path file);

    /** When the last backup was written; remembered beside the workshop's files. Disk. */
    Optional<BackedUp> lastBackup();

    /** Writes all documents, movements and blobs as one JSON file. Disk. */
    Result<CopyReport> exportJson(Path file);

    /** Brings an export into this workshop, which must be empty. One change. Disk. */
    Result<CopyReport> importJson(Path file);

    /** Waits for the writer, closes the files and frees the lock. Later calls do nothing. */
    @Override
    void close();

    /** Ends a subscription. */
    interface Registration extends AutoCloseable {
        @Override
        void close();
    }

    /** @param problems plain sentences, empty when all is well */
    record CheckReport(long documents, long movements, long blobs, List<String> problems) {
        public CheckReport {
            problems = List.copyOf(problems);
        }
    }

    /** @param file as it was named then; it may have been moved since */
    record BackedUp(Instant at, String file) {}

    /** What a backup, export, import or restore carried. */
    record CopyReport(Path file, long documents, long movements, long blobs, long bytes) {}
}
