package org.glintery.testkit;

import java.util.LinkedHashMap;
import java.util.Map;
import org.glintery.api.workshop.Blob;

/** All that a workshop in memory holds at one revision. Immutable. */
record MemoryState(long revision, MemoryDocuments documents, Map<String, Blob> blobs, PlainState ledger) {

    static MemoryState empty(PlainState ledger) {
        return new MemoryState(0, MemoryDocuments.NONE, Map.of(), ledger);
    }

    MemoryState with(MemoryDocuments newDocuments) {
        return new MemoryState(revision, newDocuments, blobs, ledger);
    }

    MemoryState with(Blob blob) {
        Map<String, Blob> more = new LinkedHashMap<>(blobs);
        more.putIfAbsent(blob.hash(), blob);
        return new MemoryState(revision, documents, more, ledger);
    }

    /** The next revision, with what the ledger holds then. */
    MemoryState next(PlainState newLedger) {
        return new MemoryState(revision + 1, documents, blobs, newLedger);
    }

    /** The contents of another state, a revision on. */
    MemoryState withContentsOf(MemoryState other, PlainState newLedger) {
        return new MemoryState(revision + 1, documents.withContentsOf(other.documents), other.blobs, newLedger);
    }
}
