package org.glintery.records;

import java.sql.SQLException;
import org.glintery.api.GlinteryException;
import org.glintery.api.MalformedException;
import org.glintery.api.ledger.Reservation;

/** Builds the state in memory from the tables. Writer thread, or before there is one. */
final class Opening {
    private Opening() {}

    /** What an opened workshop knows. @param changeIds every change's id with its number */
    record Opened(State state, LedgerMemory memory, MovementIds changeIds, UndoStack undo) {}

    static Opened of(Tables tables, Names names, JacksonCodec codec) throws SQLException {
        Documents documents = tables.documents().load();
        var memory = new LedgerMemory(Math.toIntExact(tables.movements().count()));
        var scan = new BalanceScan(memory);
        tables.movements().scan(scan);
        var changeIds = new MovementIds(64);
        long revision = tables.changes().loadIds(changeIds);
        var state = new State(
                revision,
                documents,
                scan.balances(names.spots()),
                reserved(documents, names, codec),
                tables.blobs().load());
        return new Opened(
                state, memory, changeIds, UndoStack.of(tables.changes().newest(UndoStack.DEPTH)));
    }

    private static ReservedDrills reserved(Documents documents, Names names, JacksonCodec codec) {
        ReservedDrills reserved = ReservedDrills.NONE;
        var kind = new DocumentKind(Reservation.TYPE.owner(), Reservation.TYPE.name());
        for (Document document : documents.shelf(kind).inOrder()) {
            try {
                Reservation reservation = codec.decode(PackedBody.unpack(document.packed()), Reservation.class);
                reserved = reserved.with(document.ref().id(), names.drills().number(reservation.drill()), reservation);
            } catch (MalformedException e) {
                throw new GlinteryException("a reservation can't be read: " + document.ref(), e);
            }
        }
        return reserved;
    }
}
