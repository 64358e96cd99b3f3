package org.glintery.records;

import org.pcollections.HashPMap;
import org.pcollections.HashTreePMap;

/** What the workshop holds at one revision. Immutable; any thread. */
record State(
        long revision,
        Documents documents,
        BalanceMap balances,
        ReservedDrills reserved,
        HashPMap<String, KeptBlob> blobs) {
    static final State EMPTY =
            new State(0, Documents.NONE, BalanceMap.EMPTY, ReservedDrills.NONE, HashTreePMap.empty());
}
