package org.glintery.records;

import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What is known of a workshop as soon as its documents are read: enough for its shelves. The ledger takes longer and is
 * read by {@link LedgerReading} when it is first needed. Before there is a writer thread.
 */
record Opening(State state, UndoStack undo, Optional<ChangeRow> toUndo, Optional<ChangeRow> toRedo) {

    /** @param booked what the ledger will give, when it is asked for */
    static Opening of(Tables tables, Supplier<Booked> booked) throws SQLException {
        List<ChangeRow> newest = tables.changes().newest(UndoStack.DEPTH);
        long revision = newest.isEmpty() ? 0 : newest.get(0).number();
        var state = new State(
                revision, tables.documents().load(), booked, tables.blobs().load());
        UndoStack undo = UndoStack.of(newest);
        return new Opening(state, undo, undo.toUndo(), undo.toRedo());
    }
}
