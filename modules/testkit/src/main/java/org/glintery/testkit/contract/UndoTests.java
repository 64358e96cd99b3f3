package org.glintery.testkit.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.LedgerEntry;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.HistoryLine;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.api.workshop.Stored;
import org.glintery.testkit.LedgerWork;
import org.junit.jupiter.api.Test;

/** Undo, redo and what is remembered of them. */
abstract class UndoTests extends WorkshopContract.Part {
    private static final UUID ID = new UUID(12, 1);
    private static final Blob PICTURE = Blob.of("image/png", new byte[] {1, 2, 3});

    private static ChangeSet.Builder everything() {
        return ChangeSet.named("Do everything")
                .create(Gauge.First.TYPE, ID, new Gauge.First(3))
                .blob(PICTURE)
                .post(LedgerAction.Movement.of(
                        UUID.randomUUID(),
                        LedgerWork.DRILLS.get(0),
                        Spot.SUPPLIER,
                        LedgerWork.SPOTS.get(0),
                        Amount.rough(50, 4),
                        "bought"));
    }

    @Test
    void takesBackAndBringsBack_allThatAChangeDid() {
        String empty = view().contentDigest();
        apply(everything());
        String full = view().contentDigest();
        assertThat(workshop().undoable()).contains("Do everything");

        workshop().undo().orThrow();
        assertThat(view().contentDigest()).isEqualTo(empty);
        assertThat(workshop().blob(PICTURE.hash())).isEmpty();
        assertThat(workshop().undoable()).isEmpty();
        assertThat(workshop().redoable()).contains("Do everything");

        workshop().redo().orThrow();
        assertThat(view().contentDigest()).isEqualTo(full);
        assertThat(workshop().blob(PICTURE.hash()).orElseThrow()).containsExactly(1, 2, 3);
        workshop().undo().orThrow();
        assertThat(view().contentDigest()).isEqualTo(empty);
    }

    @Test
    void takesBackTheNewestFirst() {
        apply(ChangeSet.named("first").put(Gauge.First.TYPE, ID, new Gauge.First(1)));
        apply(ChangeSet.named("second").put(Gauge.First.TYPE, ID, new Gauge.First(2)));
        workshop().undo().orThrow();
        assertThat(view().find(Gauge.First.TYPE, ID).orElseThrow().value().width())
                .isEqualTo(1);
        workshop().undo().orThrow();
        assertThat(view().find(Gauge.First.TYPE, ID)).isEmpty();
        assertThat(code(workshop().undo())).isEqualTo("nothing-to-undo");
    }

    @Test
    void forgetsWhatWasTakenBack_onceSomethingElseIsDone() {
        apply(ChangeSet.named("first").put(Gauge.First.TYPE, ID, new Gauge.First(1)));
        workshop().undo().orThrow();
        apply(ChangeSet.named("second").put(Gauge.First.TYPE, ID, new Gauge.First(2)));
        assertThat(workshop().redoable()).isEmpty();
        assertThat(code(workshop().redo())).isEqualTo("nothing-to-redo");
    }

    @Test
    void refusesAChangeThatWasComputedBefore_thoughUndoBroughtTheSameContent() {
        apply(ChangeSet.named("first").put(Gauge.First.TYPE, ID, new Gauge.First(1)));
        Stored<Gauge.First> read = view().find(Gauge.First.TYPE, ID).orElseThrow();
        apply(ChangeSet.named("second").put(Gauge.First.TYPE, ID, new Gauge.First(2)));
        workshop().undo().orThrow();
        assertThat(apply(ChangeSet.named("late").replace(Gauge.First.TYPE, read, new Gauge.First(3))))
                .isEqualTo("out-of-date");
    }

    @Test
    void remembersWhatWasDone_newestFirst() {
        apply(ChangeSet.named("first").put(Gauge.First.TYPE, ID, new Gauge.First(1)));
        workshop().undo().orThrow();
        workshop().redo().orThrow();
        List<HistoryLine> lines = workshop().history(10);
        assertThat(lines)
                .extracting(HistoryLine::kind)
                .containsExactly(HistoryLine.Kind.REDO, HistoryLine.Kind.UNDO, HistoryLine.Kind.DONE);
        assertThat(lines).extracting(HistoryLine::sentence).containsOnly("first");
        assertThat(lines.get(1).undoes()).contains(lines.get(2).change());
        assertThat(lines.get(0).undoes()).contains(lines.get(1).change());
        assertThat(lines).extracting(HistoryLine::revision).containsExactly(3L, 2L, 1L);
        assertThat(workshop().history(1)).isEqualTo(lines.subList(0, 1));
    }

    @Test
    void booksAReversal_forEachMovementThatIsTakenBack() {
        apply(everything());
        workshop().undo().orThrow();
        List<LedgerEntry> entries = new ArrayList<>();
        workshop().ledger(LedgerQuery.all(), entries::add);
        assertThat(entries).extracting(LedgerEntry::sequence).containsExactly(1L, 2L);
        LedgerAction taken = entries.get(1).action();
        assertThat(taken).isInstanceOf(LedgerAction.Reversal.class);
        assertThat(((LedgerAction.Reversal) taken).reverses())
                .isEqualTo(entries.get(0).action().id());
        assertThat(entries.get(1).from()).isEqualTo(entries.get(0).to());
        assertThat(entries.get(1).count()).isEqualTo(50);
    }
}
