package org.glintery.testkit;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.LedgerEntry;
import org.glintery.api.workshop.HistoryLine;

/** The changes of a workshop in memory, and which of them undo and redo would take. Not safe for several threads. */
final class MemoryHistory {
    private final List<HistoryLine> lines = new ArrayList<>();
    private final Deque<Step> done = new ArrayDeque<>();
    private final Deque<Step> undone = new ArrayDeque<>();

    /**
     * A change as undo and redo see it.
     *
     * @param change whose inverse comes next: the last that made or unmade it
     * @param booked what that booked
     */
    record Step(
            UUID change,
            String sentence,
            MemoryState before,
            MemoryState after,
            boolean touchedLedger,
            List<LedgerEntry> booked) {

        Step by(UUID newChange, List<LedgerEntry> newlyBooked) {
            return new Step(newChange, sentence, before, after, touchedLedger, newlyBooked);
        }
    }

    boolean knows(UUID change) {
        return lines.stream().anyMatch(line -> line.change().equals(change));
    }

    Optional<Step> toUndo() {
        return Optional.ofNullable(done.peek());
    }

    Optional<Step> toRedo() {
        return Optional.ofNullable(undone.peek());
    }

    /** A new change. What was taken back before can't be brought back any more. */
    void done(Step step, long revision, Instant at) {
        done.push(step);
        undone.clear();
        line(step, revision, at, HistoryLine.Kind.DONE, Optional.empty());
    }

    void undone(Step step, long revision, Instant at) {
        UUID undoes = done.pop().change();
        undone.push(step);
        line(step, revision, at, HistoryLine.Kind.UNDO, Optional.of(undoes));
    }

    void redone(Step step, long revision, Instant at) {
        UUID undoes = undone.pop().change();
        done.push(step);
        line(step, revision, at, HistoryLine.Kind.REDO, Optional.of(undoes));
    }

    private void line(Step step, long revision, Instant at, HistoryLine.Kind kind, Optional<UUID> undoes) {
        lines.add(new HistoryLine(revision, step.change(), step.sentence(), at, kind, undoes));
    }

    List<HistoryLine> newest(int most) {
        List<HistoryLine> newestFirst = new ArrayList<>(lines);
        Collections.reverse(newestFirst);
        return newestFirst.stream().limit(most).toList();
    }
}
