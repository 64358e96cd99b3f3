package org.glintery.records;

import java.util.function.Supplier;
import org.pcollections.HashPMap;
import org.pcollections.HashTreePMap;

/**
 * What the workshop holds at one revision. Immutable; any thread.
 *
 * @param booked has the ledger read when it is first asked for, and waits for it
 */
record State(long revision, Documents documents, Supplier<Booked> booked, HashPMap<String, KeptBlob> blobs) {
    static final State EMPTY = new State(0, Documents.NONE, () -> Booked.NOTHING, HashTreePMap.empty());

    BalanceMap balances() {
        return booked.get().balances();
    }

    ReservedDrills reserved() {
        return booked.get().reserved();
    }
}
