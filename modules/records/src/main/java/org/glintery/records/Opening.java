package org.glintery.records;

import java.sql.SQLException;
import java.util.function.Supplier;

/**
 * What is known of a workshop as soon as its documents are read: enough for its shelves. The ledger takes longer and is
 * read by {@link LedgerReading} when it is first needed. Before there is a writer thread.
 */
record Opening(State state, UndoTops undo) {

    /** @param booked what the ledger will give, when it is asked for */
    static Opening of(Tables tables, Supplier<Booked> booked) throws SQLException {
        long revision = tables.changes().last();
        var state = new State(
                revision, tables.documents().load(), booked, tables.blobs().load());
        return new Opening(state, UndoTops.after(revision, tables.changes()::row));
    }
}
