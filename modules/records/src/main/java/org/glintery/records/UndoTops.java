package org.glintery.records;

import java.sql.SQLException;
import java.util.Optional;
import org.glintery.api.workshop.HistoryLine;

/**
 * Which change undo would take back, and which redo would bring back. Both follow from the history alone: undoing a change
 * leaves what there was to undo before it, and a redo leaves what there was to redo before the undo it takes back. So they
 * reach to the first change, also after a restart, without being kept.
 */
record UndoTops(Optional<ChangeRow> toUndo, Optional<ChangeRow> toRedo) {

    /** Reads one change of the history. */
    interface History {
        ChangeRow row(long number) throws SQLException;
    }

    /** After the newest change. @param number of the newest, 0 without any */
    static UndoTops after(long number, History history) throws SQLException {
        return new UndoTops(toUndo(number, history), toRedo(number, history));
    }

    private static Optional<ChangeRow> toUndo(long number, History history) throws SQLException {
        long last = number;
        while (last > 0) {
            ChangeRow row = history.row(last);
            if (row.kind() != HistoryLine.Kind.UNDO) {
                return Optional.of(row);
            }
            last = row.undoes() - 1;
        }
        return Optional.empty();
    }

    private static Optional<ChangeRow> toRedo(long number, History history) throws SQLException {
        long last = number;
        while (last > 0) {
            ChangeRow row = history.row(last);
            if (row.kind() == HistoryLine.Kind.UNDO) {
                return Optional.of(row);
            }
            if (row.kind() == HistoryLine.Kind.DONE) {
                return Optional.empty();
            }
            last = row.undoes() - 1;
        }
        return Optional.empty();
    }
}
