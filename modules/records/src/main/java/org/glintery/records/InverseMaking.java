package org.glintery.records;

import java.sql.SQLException;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.glintery.api.Refusal;
import org.glintery.api.workshop.DocRef;

/**
 * The inverse of a change: its steps taken back in reverse order. Refused when a document is no longer what the change
 * wrote, by content and not by version, or when drills have since gone elsewhere. Reservations are not asked about: what
 * undo brings back was allowed when it was there. Writer thread.
 */
final class InverseMaking {
    private final Tables tables;
    private final LedgerBook ledger;
    private final DocumentSteps documents;
    private final Supplier<UUID> ids;

    InverseMaking(Tables tables, LedgerBook ledger, DocumentSteps documents, Supplier<UUID> ids) {
        this.tables = tables;
        this.ledger = ledger;
        this.documents = documents;
        this.ids = ids;
    }

    Optional<Refusal> make(ChangeRow change, Draft draft) throws SQLException {
        Optional<Refusal> refusal = takeBackMovements(change, draft);
        if (refusal.isEmpty()) {
            refusal = takeBackDocuments(change, draft);
        }
        if (refusal.isEmpty()) {
            takeBackBlobs(change, draft);
        }
        return refusal.map(
                why -> why.code().equals("later-work") ? why : Refusals.laterWork(change.sentence(), why.text()));
    }

    private Optional<Refusal> takeBackMovements(ChangeRow change, Draft draft) throws SQLException {
        for (int i = change.movements() - 1; i >= 0; i--) {
            MovementRow row = tables.movements().row(change.firstMovement() + i);
            Optional<Refusal> refusal = ledger.takeBack(row, ids.get(), "taken back", draft);
            if (refusal.isPresent()) {
                return refusal;
            }
        }
        return Optional.empty();
    }

    private Optional<Refusal> takeBackDocuments(ChangeRow change, Draft draft) throws SQLException {
        List<DocumentTable.Found> found = tables.documents().foundBy(change.number());
        Collections.reverse(found);
        for (DocumentTable.Found one : found) {
            DocRef ref = one.ref();
            Optional<byte[]> now = draft.documents().find(ref).flatMap(Document::hash);
            boolean unchanged = now.isPresent() == one.afterHash().isPresent()
                    && Arrays.equals(now.orElse(null), one.afterHash().orElse(null));
            if (!unchanged) {
                return Optional.of(Refusals.laterDocument(change.sentence()));
            }
            Optional<Refusal> refusal = documents.set(draft, ref, one.typeVersion(), one.packed());
            if (refusal.isPresent()) {
                return refusal;
            }
        }
        return Optional.empty();
    }

    private void takeBackBlobs(ChangeRow change, Draft draft) throws SQLException {
        for (Draft.BlobStep step : tables.blobs().stepsOf(change.number())) {
            boolean there = draft.blobs().containsKey(step.blob().hash());
            if (step.added() && there) {
                draft.dropBlob(step.blob());
            } else if (!step.added() && !there) {
                draft.addBlob(step.blob(), null);
            }
        }
    }
}
