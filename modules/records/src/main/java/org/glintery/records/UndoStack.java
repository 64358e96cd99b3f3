package org.glintery.records;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Which change undo would take back, and which redo. Rebuilt from the newest changes at opening. Writer thread. */
final class UndoStack {
    /** How far back undo reaches. */
    static final int DEPTH = 500;

    private final Deque<ChangeRow> done = new ArrayDeque<>();
    private final Deque<ChangeRow> undone = new ArrayDeque<>();

    /** @param newestFirst at most {@link #DEPTH} rows */
    static UndoStack of(List<ChangeRow> newestFirst) {
        var stack = new UndoStack();
        var oldestFirst = new java.util.ArrayList<>(newestFirst);
        Collections.reverse(oldestFirst);
        oldestFirst.forEach(stack::applied);
        return stack;
    }

    void applied(ChangeRow change) {
        switch (change.kind()) {
            case DONE -> {
                done.push(change);
                undone.clear();
                if (done.size() > DEPTH) {
                    done.removeLast();
                }
            }
            case UNDO -> {
                done.removeIf(row -> row.number() == change.undoes());
                undone.push(change);
            }
            case REDO -> {
                undone.removeIf(row -> row.number() == change.undoes());
                done.push(change);
            }
        }
    }

    Optional<ChangeRow> toUndo() {
        return Optional.ofNullable(done.peek());
    }

    Optional<ChangeRow> toRedo() {
        return Optional.ofNullable(undone.peek());
    }
}
