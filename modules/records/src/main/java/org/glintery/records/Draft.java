package org.glintery.records;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.glintery.api.workshop.DocRef;
import org.pcollections.HashPMap;

/** A change in the making: the state as it would be, and the rows to write. Writer thread only. */
final class Draft {
    private final State base;
    private final Instant now;
    private Documents documents;
    private BalanceMap balances;
    private ReservedDrills reserved;
    private HashPMap<String, KeptBlob> blobs;
    private final List<MovementRow> movements = new ArrayList<>();
    private final Map<UUID, MovementRow> movementById = new HashMap<>();
    private final Map<Long, Long> reversers = new HashMap<>();
    private final List<DocumentStep> documentSteps = new ArrayList<>();
    private final List<BlobStep> blobSteps = new ArrayList<>();
    private final HouseFlow flow = new HouseFlow();

    /** @param before null when the document never was there */
    record DocumentStep(Document before, Document after) {}

    /** @param bytes null when the bytes are in the folder already */
    record BlobStep(KeptBlob blob, boolean added, byte[] bytes) {}

    Draft(State base, Instant now) {
        this.base = base;
        this.now = now;
        this.documents = base.documents();
        this.balances = base.balances();
        this.reserved = base.reserved();
        this.blobs = base.blobs();
    }

    State base() {
        return base;
    }

    Instant now() {
        return now;
    }

    long revision() {
        return base.revision() + 1;
    }

    Documents documents() {
        return documents;
    }

    BalanceMap balances() {
        return balances;
    }

    ReservedDrills reserved() {
        return reserved;
    }

    HashPMap<String, KeptBlob> blobs() {
        return blobs;
    }

    HouseFlow flow() {
        return flow;
    }

    List<MovementRow> movements() {
        return movements;
    }

    List<DocumentStep> documentSteps() {
        return documentSteps;
    }

    List<BlobStep> blobSteps() {
        return blobSteps;
    }

    boolean changesNothing() {
        return movements.isEmpty() && documentSteps.isEmpty() && blobSteps.isEmpty();
    }

    /** The movement this change has booked under an id; null without. */
    MovementRow booked(UUID id) {
        return movementById.get(id);
    }

    /** The number of the entry of this change that reverses another, 0 without. */
    long reverser(long sequence) {
        return reversers.getOrDefault(sequence, 0L);
    }

    void book(MovementRow row, BalanceMap after) {
        movements.add(row);
        movementById.put(row.id(), row);
        if (row.reverses() != 0) {
            reversers.put(row.reverses(), row.sequence());
        }
        balances = after;
    }

    /** Puts, replaces or removes. @param packed null to remove */
    void document(DocRef ref, int typeVersion, byte[] packed) {
        Document before = documents.trace(ref).orElse(null);
        Document after = new Document(
                before == null ? documents.nextNumber() : before.number(),
                ref,
                typeVersion,
                before == null ? 1 : before.version() + 1,
                packed);
        documents = documents.with(after);
        documentSteps.add(new DocumentStep(before, after));
    }

    void reserve(ReservedDrills after) {
        reserved = after;
    }

    void addBlob(KeptBlob blob, byte[] bytes) {
        blobs = blobs.plus(blob.hash(), blob);
        blobSteps.add(new BlobStep(blob, true, bytes));
    }

    void dropBlob(KeptBlob blob) {
        blobs = blobs.minus(blob.hash());
        blobSteps.add(new BlobStep(blob, false, null));
    }

    State finished() {
        Booked booked = new Booked(balances, reserved);
        return new State(revision(), documents, () -> booked, blobs);
    }
}
