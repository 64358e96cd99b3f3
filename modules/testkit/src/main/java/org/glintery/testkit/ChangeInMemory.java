package org.glintery.testkit;

import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.Precondition;
import org.glintery.api.workshop.RawDocument;

/** Works out what a change makes of documents and blobs. The ledger has its own part. */
final class ChangeInMemory {
    private static final int MOST_BLOB_BYTES = 64 << 20;
    private final MemoryState base;

    ChangeInMemory(MemoryState base) {
        this.base = base;
    }

    /** The same state when nothing in it changes. */
    MemoryState apply(ChangeSet change) throws RefusedException {
        for (Precondition precondition : change.preconditions()) {
            if (!holds(precondition)) {
                throw new RefusedException("out-of-date");
            }
        }
        MemoryState draft = base;
        for (Operation operation : change.operations()) {
            draft = step(operation, draft);
        }
        return draft;
    }

    private boolean holds(Precondition precondition) {
        if (precondition instanceof Precondition.DocumentAt at) {
            int version = base.documents()
                    .find(at.ref())
                    .map(MemoryDocuments.Kept::version)
                    .orElse(0);
            return version == at.version();
        }
        var at = (Precondition.BalanceAt) precondition;
        return base.ledger().at(at.spot(), at.drill()).equals(at.balance());
    }

    private static MemoryState step(Operation operation, MemoryState draft) throws RefusedException {
        MemoryDocuments documents = draft.documents();
        if (operation instanceof Operation.Put<?> put) {
            return draft.with(put(put, documents));
        }
        if (operation instanceof Operation.PutRaw raw) {
            RawDocument document = raw.document();
            MemoryDocuments put = documents.with(document.ref(), document.typeVersion(), document.body());
            if (!document.ref().isWellNamed() || document.typeVersion() < 1) {
                throw new RefusedException("malformed");
            }
            return draft.with(put);
        }
        if (operation instanceof Operation.Remove remove) {
            MemoryDocuments without = documents.without(remove.ref());
            return without == documents ? draft : draft.with(without);
        }
        return operation instanceof Operation.AddBlob add ? added(add.blob(), draft) : draft;
    }

    private static <T extends Record> MemoryDocuments put(Operation.Put<T> put, MemoryDocuments documents)
            throws RefusedException {
        return documents.with(put.type(), put.type().ref(put.id()), put.value());
    }

    private static MemoryState added(Blob blob, MemoryState draft) throws RefusedException {
        if (draft.blobs().containsKey(blob.hash())) {
            return draft;
        }
        if (blob.bytes().length > MOST_BLOB_BYTES) {
            throw new RefusedException("too-large");
        }
        if (!Blob.hash(blob.bytes()).equals(blob.hash())) {
            throw new RefusedException("malformed");
        }
        return draft.with(blob);
    }
}
