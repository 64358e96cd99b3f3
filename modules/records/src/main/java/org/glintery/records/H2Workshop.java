package org.glintery.records;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.glintery.api.GlinteryException;
import org.glintery.api.MalformedException;
import org.glintery.api.OffTheEventThread;
import org.glintery.api.Result;
import org.glintery.api.ledger.LedgerEntry;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Changed;
import org.glintery.api.workshop.HistoryLine;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshop.BackedUp;
import org.glintery.api.workshop.Workshop.CheckReport;
import org.glintery.api.workshop.Workshop.CopyReport;
import org.glintery.api.workshop.Workshop.Registration;

/** A workshop in its folder. Any thread; the work on the database is handed to the writer thread. */
final class H2Workshop implements Workshop {
    private final Path folder;
    private final WorkshopLock lock;
    private final Database database;
    private final Journal journal;
    private final Names names;
    private final JacksonCodec codec;
    private final Clock clock;
    private final Tables tables;
    private final BlobFolder blobs;
    private final Opening opened;
    private final WriterThread writer = new WriterThread();
    private final ChangeDispatcher news = new ChangeDispatcher();
    private final ServiceShelf services = new ServiceShelf(this);
    private final AtomicReference<RecordsView> view = new AtomicReference<>();
    private final ChangeMaking.StepWatch watch;
    private final Schema schema;
    private final LateLedger ledger = new LateLedger(writer, this::readLedger);

    /** Takes over the lock and the database: closing the workshop closes both. */
    H2Workshop(
            Path folder,
            WorkshopLock lock,
            Database database,
            JacksonCodec codec,
            Clock clock,
            ChangeMaking.StepWatch watch,
            Schema schema)
            throws SQLException, IOException {
        this.folder = folder;
        this.lock = lock;
        this.database = database;
        this.codec = codec;
        this.clock = clock;
        this.names = new Names();
        this.blobs = new BlobFolder(folder);
        this.tables = Tables.over(database.connection(), names, codec);
        tables.names().load(database.connection());
        var replay = new Replay(database, tables);
        this.journal = Journal.open(folder, replay);
        replay.finish();
        this.opened = opened();
        this.view.set(viewOf(opened.state()));
        this.watch = watch;
        this.schema = schema;
    }

    private Opening opened() throws SQLException, IOException {
        try {
            return Opening.of(tables, ledger::booked);
        } catch (SQLException | GlinteryException e) {
            journal.close();
            throw e;
        }
    }

    private LateLedger.Read readLedger() throws SQLException {
        LedgerReading read =
                LedgerReading.of(tables, names, codec, opened.state().documents());
        return new LateLedger.Read(
                read.booked(),
                new ChangeWriter(
                        database, journal, tables, blobs, names, codec, opened, read, clock, watch, this::published));
    }

    private void published(ChangeWriter.News committed) {
        view.set(viewOf(committed.state()));
        news.committed(committed.changed());
    }

    private RecordsView viewOf(State state) {
        return new RecordsView(state, LocalDate.now(clock), names, codec);
    }

    @Override
    public Path folder() {
        return folder;
    }

    /** A new day makes a new view, since reservations expire. */
    @Override
    public View view() {
        RecordsView newest = view.get();
        if (!newest.day().equals(LocalDate.now(clock))) {
            view.compareAndSet(newest, viewOf(newest.state()));
        }
        return view.get();
    }

    @Override
    public boolean isReading() {
        return ledger.isBeingRead();
    }

    @Override
    public Result<Applied> apply(ChangeSet change) {
        return prepared(change).then(this::apply);
    }

    Result<Applied> apply(PreparedChange change) {
        return ledger.change(one -> one.apply(change));
    }

    private Result<PreparedChange> prepared(ChangeSet change) {
        try {
            return Result.ok(PreparedChange.of(change, state().documents(), codec));
        } catch (MalformedException e) {
            return Result.refused(Refusals.malformed(e.getMessage()));
        }
    }

    @Override
    public CompletionStage<Result<Applied>> submit(ChangeSet change) {
        Result<PreparedChange> prepared = prepared(change);
        return prepared instanceof Result.Refused<PreparedChange> refused
                ? CompletableFuture.completedFuture(Result.refused(refused.refusal()))
                : ledger.submit(one -> one.apply(prepared.orThrow()));
    }

    @Override
    public Result<Applied> undo() {
        return ledger.change(ChangeWriter::undo);
    }

    @Override
    public Result<Applied> redo() {
        return ledger.change(ChangeWriter::redo);
    }

    @Override
    public Optional<String> undoable() {
        return tops().toUndo().map(ChangeRow::sentence);
    }

    @Override
    public Optional<String> redoable() {
        return tops().toRedo().map(ChangeRow::sentence);
    }

    private UndoTops tops() {
        return ledger.changes().map(ChangeWriter::tops).orElse(opened.undo());
    }

    @Override
    public List<HistoryLine> history(int most) {
        return writer.call(() -> {
            List<ChangeRow> rows = tables.changes().newest(most);
            var lines = new ArrayList<HistoryLine>(rows.size());
            for (ChangeRow row : rows) {
                Optional<UUID> undoes = row.undoes() == 0
                        ? Optional.empty()
                        : Optional.of(tables.changes().row(row.undoes()).id());
                lines.add(
                        new HistoryLine(row.number(), row.id(), row.sentence(), row.recordedAt(), row.kind(), undoes));
            }
            return lines;
        });
    }

    @Override
    public void ledger(LedgerQuery query, Consumer<LedgerEntry> each) {
        ledger(query, Long.MAX_VALUE, (entry, row) -> each.accept(entry));
    }

    @Override
    public Set<UUID> booked(Collection<UUID> ids) {
        List<UUID> asked = List.copyOf(ids);
        return ledger.call(changes -> changes.booked(asked));
    }

    /** @param revision entries that later changes booked are left out */
    void ledger(LedgerQuery query, long revision, BiConsumer<LedgerEntry, MovementRow> each) {
        new LedgerPages(writer, tables, names).each(query, revision, each);
    }

    @Override
    public Optional<byte[]> blob(String hash) {
        OffTheEventThread.check();
        if (!state().blobs().containsKey(hash)) {
            return Optional.empty();
        }
        try {
            return blobs.read(hash);
        } catch (IOException e) {
            throw new GlinteryException("a picture could not be read", e);
        }
    }

    @Override
    public Registration listen(Consumer<Changed> listener) {
        return news.listen(listener);
    }

    @Override
    public <S> Optional<S> find(Class<S> service) {
        return services.find(service);
    }

    @Override
    public CheckReport check() {
        return checkBut(Set.of());
    }

    /** @param lost the hashes of pictures that are known to be gone */
    CheckReport checkBut(Set<String> lost) {
        var check = new WorkshopCheck(tables, names, codec, blobs, lost);
        try {
            return ledger.call(changes -> check.run(changes.state()));
        } catch (LateLedger.UnreadableException e) {
            return writer.call(() -> check.withoutLedger(opened.state()));
        }
    }

    @Override
    public Result<CopyReport> backup(Path file) {
        OffTheEventThread.check();
        Result<CopyReport> written = new BackupZip(this, codec, clock).write(file);
        if (written instanceof Result.Ok<CopyReport>) {
            new LastBackup(folder).remember(clock.instant(), file);
        }
        return written;
    }

    @Override
    public Optional<BackedUp> lastBackup() {
        OffTheEventThread.check();
        return new LastBackup(folder).read();
    }

    @Override
    public Result<CopyReport> exportJson(Path file) {
        OffTheEventThread.check();
        return new JsonExport(this, codec).writeFile(file);
    }

    @Override
    public Result<CopyReport> importJson(Path file) {
        OffTheEventThread.check();
        return new JsonImport(this, codec).readFile(file);
    }

    /** Puts a blob's bytes into the folder, ahead of the change that will bring it. */
    void lay(Blob blob) {
        writer.call(() -> {
            blobs.write(blob.hash(), blob.bytes());
            return null;
        });
    }

    /** Takes back out of the folder what no change brought. */
    void takeAway(KeptBlob blob) {
        ledger.call(changes -> {
            if (!changes.state().blobs().containsKey(blob.hash())) {
                blobs.delete(blob.hash());
            }
            return null;
        });
    }

    /** Whether there is nothing here, and in the ledger never was. */
    boolean isEmpty() {
        return ledger.call(ChangeWriter::isEmpty);
    }

    /** The state and a copy of the database that belong together. */
    State copyDatabase(Path zip) {
        return ledger.call(changes -> {
            database.copyTo(zip);
            return changes.state();
        });
    }

    Schema schema() {
        return schema;
    }

    State state() {
        return view.get().state();
    }

    @Override
    public void close() {
        OffTheEventThread.check();
        if (writer.isClosed()) {
            return;
        }
        try {
            writer.call(() -> {
                if (database.close()) {
                    journal.clear();
                }
                journal.close();
                return null;
            });
        } finally {
            writer.close();
            news.close();
            lock.close();
        }
    }
}
