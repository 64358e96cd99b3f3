package org.glintery.records;

import java.io.IOException;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Collectors;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.Changed;
import org.glintery.api.workshop.HistoryLine;

/**
 * Applies changes: works each out on a draft, writes it in one transaction, makes it durable by the journal, then lets the
 * world see it.
 * What fails on the way leaves memory and disk as they were. Writer thread.
 */
final class ChangeWriter {
    private static final Logger LOG = Logger.getLogger(ChangeWriter.class.getName());

    private final Database database;
    private final Journal journal;
    private final Tables tables;
    private final BlobFolder blobs;
    private final ChangeMaking making;
    private final InverseMaking inverses;
    private final LedgerMemory memory;
    private final MovementIds changeIds;
    private final Clock clock;
    private final ChangeMaking.StepWatch watch;
    private final Consumer<News> published;
    /** The picture files that the change under way has made. */
    private final List<String> laid = new ArrayList<>();

    private volatile State state;
    private volatile UndoTops undo;

    /** What was committed. */
    record News(State state, Changed changed) {}

    ChangeWriter(
            Database database,
            Journal journal,
            Tables tables,
            BlobFolder blobs,
            Names names,
            JacksonCodec codec,
            Opening opened,
            LedgerReading ledger,
            Clock clock,
            ChangeMaking.StepWatch watch,
            Consumer<News> published) {
        this.database = database;
        this.journal = journal;
        this.tables = tables;
        this.blobs = blobs;
        this.memory = ledger.memory();
        this.changeIds = ledger.changeIds();
        this.undo = opened.undo();
        this.state = opened.state();
        this.clock = clock;
        this.watch = watch;
        this.published = published;
        var book = new LedgerBook(names, memory, watch.sums(names), tables.movements()::row);
        var documents = new DocumentSteps(codec, names.drills());
        this.making = new ChangeMaking(names, book, documents, watch);
        this.inverses = new InverseMaking(tables, book, documents, UUID::randomUUID);
    }

    State state() {
        return state;
    }

    /** Any thread. */
    UndoTops tops() {
        return undo;
    }

    /** How many movements there are. */
    long movements() {
        return memory.last();
    }

    Set<UUID> booked(List<UUID> ids) {
        return ids.stream().filter(id -> memory.ids().find(id) != 0).collect(Collectors.toSet());
    }

    /** Whether nothing was ever put into the workshop. */
    boolean isEmpty() {
        return movements() == 0
                && state.documents().count() == 0
                && state.blobs().isEmpty();
    }

    Result<Applied> apply(PreparedChange change) {
        if (change.trusted() && !isEmpty()) { // others may have gone on while an import was read
            return Result.refused("not-empty", Bundle.import_not_empty());
        }
        if (changeIds.find(change.id()) != 0) {
            return Result.refused(Refusals.changeRepeated());
        }
        return carryOut(
                change.id(),
                change.sentence(),
                HistoryLine.Kind.DONE,
                0,
                (draft, day) -> making.make(change, draft, day));
    }

    Result<Applied> undo() {
        return undo.toUndo()
                .map(row -> invert(row, HistoryLine.Kind.UNDO))
                .orElse(Result.refused(Refusals.nothingToUndo()));
    }

    Result<Applied> redo() {
        return undo.toRedo()
                .map(row -> invert(row, HistoryLine.Kind.REDO))
                .orElse(Result.refused(Refusals.nothingToRedo()));
    }

    private Result<Applied> invert(ChangeRow row, HistoryLine.Kind kind) {
        return carryOut(
                UUID.randomUUID(), row.sentence(), kind, row.number(), (draft, day) -> inverses.make(row, draft));
    }

    private interface Work {
        Optional<Refusal> on(Draft draft, LocalDate day) throws SQLException;
    }

    private Result<Applied> carryOut(UUID id, String sentence, HistoryLine.Kind kind, long undoes, Work work) {
        if (database.isClosed()) {
            return Result.refused(Refusals.closed());
        }
        Instant now = clock.instant();
        var draft = new Draft(state, now);
        laid.clear();
        try {
            Optional<Refusal> refusal = work.on(draft, LocalDate.ofInstant(now, clock.getZone()));
            if (refusal.isPresent()) {
                return Result.refused(refusal.get());
            }
            if (draft.changesNothing()) {
                return Result.ok(new Applied(id, state.revision()));
            }
            var row = new ChangeRow(
                    draft.revision(),
                    id,
                    sentence,
                    now,
                    kind,
                    undoes,
                    memory.last() + 1,
                    draft.movements().size());
            UndoTops next = UndoTops.after(row.number(), history(row));
            write(row, draft);
            publish(row, draft, next);
            return Result.ok(new Applied(id, draft.revision()));
        } catch (SQLException | IOException e) {
            takeBack();
            return Result.refused(DiskRefusals.of(e, database.isClosed()));
        } catch (RuntimeException | Error e) { // nothing half written may stay, whatever went wrong
            takeBack();
            throw e;
        }
    }

    /** Nothing half written stays. A database that closed itself over a commit may hold the change, and so its pictures. */
    private void takeBack() {
        database.rollback();
        if (database.isClosed()) {
            return;
        }
        for (String hash : laid) {
            try {
                blobs.delete(hash);
            } catch (IOException e) { // the failure that led here is told; the file is in nobody's way
                LOG.log(Level.FINE, "a picture that came to nothing stays", e);
            }
        }
    }

    /** The history with one more change than is on disk. */
    private UndoTops.History history(ChangeRow newest) {
        return number -> number == newest.number() ? newest : tables.changes().row(number);
    }

    private void write(ChangeRow row, Draft draft) throws SQLException, IOException {
        for (Draft.BlobStep step : draft.blobSteps()) {
            if (step.bytes() != null) {
                watch.before(ChangeMaking.Writing.PICTURE);
                if (blobs.write(step.blob().hash(), step.bytes())) {
                    laid.add(step.blob().hash());
                }
            }
        }
        tables.documents().number(draft.documentSteps());
        byte[] told = JournalWriting.bytes(entry(row, draft));
        watch.before(ChangeMaking.Writing.TABLES);
        tables.write(row, draft.movements(), draft.documentSteps(), draft.blobSteps(), database.connection());
        watch.before(ChangeMaking.Writing.JOURNAL);
        journal.append(told);
        try {
            watch.before(ChangeMaking.Writing.COMMIT);
            database.commit();
        } catch (SQLException | IOException | RuntimeException | Error e) { // whatever it was, the change is not made
            journal.takeBackLast();
            throw e;
        }
    }

    private JournalEntry entry(ChangeRow row, Draft draft) {
        return new JournalEntry(
                row,
                tables.names().unsaved(),
                draft.movements(),
                draft.documentSteps().stream().map(Draft.DocumentStep::after).toList(),
                draft.blobSteps().stream()
                        .map(step -> new JournalEntry.BlobChange(step.blob(), step.added()))
                        .toList());
    }

    private void publish(ChangeRow row, Draft draft, UndoTops next) {
        tables.names().committed();
        for (MovementRow movement : draft.movements()) {
            memory.remember(
                    movement.sequence(),
                    movement.id().getMostSignificantBits(),
                    movement.id().getLeastSignificantBits(),
                    movement.reverses());
        }
        changeIds.put(
                row.id().getMostSignificantBits(), row.id().getLeastSignificantBits(), Math.toIntExact(row.number()));
        undo = next;
        state = draft.finished();
        var touched =
                draft.documentSteps().stream().map(step -> step.after().ref()).collect(Collectors.toSet());
        published.accept(new News(
                state, new Changed(state.revision(), touched, !draft.movements().isEmpty())));
    }
}
