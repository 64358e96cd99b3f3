package org.glintery.records;

import java.io.IOException;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Optional;
import org.glintery.api.Refusal;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.PictureFacts;
import org.glintery.api.workshop.Precondition;
import org.openide.util.NbBundle.Messages;

/** Works a change out on a draft, step by step; the first step that can't be refuses the whole. Writer thread. */
@Messages({"# {0} - instant", "recorded-at=recorded at {0}"})
final class ChangeMaking {
    private final Names names;
    private final LedgerBook ledger;
    private final DocumentSteps documents;
    private final ReservationRule reservations;
    private final StepWatch watch;

    /** Told of all that a change goes through. Tests put a fault in here. */
    interface StepWatch {
        StepWatch NONE = place -> {};

        /** Before a step is worked out. */
        void before(int place);

        /** Before something of the change is written. */
        default void before(Writing writing) throws SQLException, IOException {}

        /** What the ledger reckons with. */
        default EffectSums sums(Names names) {
            return new EffectSums(names);
        }
    }

    /** What is written of a change, in this order. */
    enum Writing {
        PICTURE,
        TABLES,
        JOURNAL,
        COMMIT
    }

    ChangeMaking(Names names, LedgerBook ledger, DocumentSteps documents, StepWatch watch) {
        this.names = names;
        this.ledger = ledger;
        this.documents = documents;
        this.reservations = new ReservationRule(names.drills());
        this.watch = watch;
    }

    Optional<Refusal> make(PreparedChange change, Draft draft, LocalDate day) throws SQLException {
        for (Precondition precondition : change.preconditions()) {
            if (!holds(precondition, draft)) {
                return Optional.of(Refusals.outOfDate());
            }
        }
        int place = 0;
        for (PreparedChange.Step step : change.steps()) {
            watch.before(place++);
            Optional<Refusal> refusal = take(step, draft);
            if (refusal.isPresent()) {
                return refusal;
            }
        }
        return change.trusted() ? Optional.empty() : reservations.check(draft, day);
    }

    private boolean holds(Precondition precondition, Draft draft) {
        if (precondition instanceof Precondition.DocumentAt at) {
            return draft.documents().find(at.ref()).map(Document::version).orElse(0) == at.version();
        }
        var at = (Precondition.BalanceAt) precondition;
        return draft.balances()
                .at(names.spots().number(at.spot()), names.drills().number(at.drill()))
                .equals(at.balance());
    }

    private Optional<Refusal> take(PreparedChange.Step step, Draft draft) throws SQLException {
        if (step instanceof PreparedChange.Step.Put put) {
            return documents.put(draft, put);
        }
        if (step instanceof PreparedChange.Step.Remove remove) {
            return documents.remove(draft, remove.ref());
        }
        if (step instanceof PreparedChange.Step.Post post) {
            return post(post, draft);
        }
        if (step instanceof PreparedChange.Step.KeepBlob keep) {
            draft.addBlob(keep.blob(), null);
            return Optional.empty();
        }
        return add(((PreparedChange.Step.AddBlob) step).blob(), draft);
    }

    private Optional<Refusal> post(PreparedChange.Step.Post post, Draft draft) throws SQLException {
        LedgerAction action = post.action();
        return action.recordedAt().map(EpochNanos::fits).orElse(true)
                ? ledger.post(action, post.sides(), draft)
                : Optional.of(Refusals.malformed(
                        Bundle.recorded_at(action.recordedAt().get())));
    }

    private static Optional<Refusal> add(Blob blob, Draft draft) {
        if (draft.blobs().containsKey(blob.hash())) {
            return Optional.empty();
        }
        Optional<Refusal> refusal = check(blob);
        if (refusal.isEmpty()) {
            draft.addBlob(new KeptBlob(blob.hash(), blob.mediaType(), blob.bytes().length), blob.bytes());
        }
        return refusal;
    }

    /** Whether a blob is of a size we keep, none of it unpacked, and what its hash says. */
    static Optional<Refusal> check(Blob blob) {
        if (blob.bytes().length > Blob.MOST_BYTES) {
            return Optional.of(Refusals.blobTooLarge());
        }
        Optional<PictureFacts> tooLarge = PictureFacts.of(blob.bytes()).filter(PictureFacts::isTooLarge);
        if (tooLarge.isPresent()) {
            return tooLarge.map(Refusals::pictureTooLarge);
        }
        return Blob.hash(blob.bytes()).equals(blob.hash()) ? Optional.empty() : Optional.of(Refusals.wrongHash());
    }
}
