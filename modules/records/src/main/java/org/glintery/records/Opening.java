package org.glintery.records;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.glintery.api.GlinteryException;
import org.glintery.api.MalformedException;
import org.glintery.api.workshop.Reservation;

/** Builds the state in memory from the tables. Writer thread, or before there is one. */
final class Opening {
    private Opening() {}

    /** What an opened workshop knows. @param changeIds every change's id with its number */
    record Opened(State state, LedgerMemory memory, MovementIds changeIds, UndoStack undo) {}

    static Opened of(Database database, Tables tables, Names names, JacksonCodec codec) throws SQLException {
        // documents and ledger are read side by side: together they are most of the time that opening takes
        var reading = new FutureTask<>(() -> kept(database, tables, names, codec));
        new Thread(reading, "Opening").start();
        var memory = new LedgerMemory(Math.toIntExact(tables.movements().count()));
        var changeIds = new MovementIds(64);
        long revision;
        BalanceMap balances;
        try {
            var scan = new BalanceScan(memory);
            tables.movements().scan(scan);
            balances = scan.balances(names.spots());
            revision = tables.changes().loadIds(changeIds);
        } catch (SQLException | RuntimeException e) {
            try {
                wait(reading); // the database is closed over this: nobody may be reading it then
            } catch (SQLException | RuntimeException other) {
                e.addSuppressed(other);
            }
            throw e;
        }
        Kept kept = wait(reading);
        var state = new State(
                revision,
                kept.documents(),
                balances,
                kept.reserved(),
                tables.blobs().load());
        return new Opened(
                state, memory, changeIds, UndoStack.of(tables.changes().newest(UndoStack.DEPTH)));
    }

    private record Kept(Documents documents, ReservedDrills reserved) {}

    private static Kept kept(Database database, Tables tables, Names names, JacksonCodec codec) throws SQLException {
        try (Connection connection = database.reading()) {
            Documents documents = tables.documents().load(connection);
            return new Kept(documents, reserved(documents, names, codec));
        }
    }

    private static Kept wait(FutureTask<Kept> reading) throws SQLException {
        boolean interrupted = false;
        try {
            while (true) {
                try {
                    return reading.get();
                } catch (InterruptedException e) {
                    interrupted = true;
                } catch (ExecutionException e) {
                    if (e.getCause() instanceof SQLException cause) {
                        throw cause;
                    }
                    throw new GlinteryException("the documents could not be read", e.getCause());
                }
            }
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private record Held(UUID id, Reservation reservation) {}

    private static ReservedDrills reserved(Documents documents, Names names, JacksonCodec codec) {
        var kind = new DocumentKind(Reservation.TYPE.owner(), Reservation.TYPE.name());
        List<Document> all = documents.shelf(kind).inOrder().toList();
        ReservedDrills reserved = ReservedDrills.NONE;
        for (Held held : all.parallelStream().map(one -> held(one, codec)).toList()) {
            int drill = names.drills().number(held.reservation().drill());
            reserved = reserved.with(held.id(), drill, held.reservation());
        }
        return reserved;
    }

    private static Held held(Document document, JacksonCodec codec) {
        try {
            return new Held(document.ref().id(), codec.decode(PackedBody.unpack(document.packed()), Reservation.class));
        } catch (MalformedException e) {
            throw new GlinteryException("a reservation can't be read: " + document.ref(), e);
        }
    }
}
