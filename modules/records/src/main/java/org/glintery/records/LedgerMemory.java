package org.glintery.records;

import java.util.BitSet;

/** What the writer remembers of the ledger besides the balances: which ids there are, what was reversed. */
final class LedgerMemory {
    private final MovementIds ids;
    private final BitSet reversed = new BitSet();
    private long last;

    LedgerMemory(int expected) {
        ids = new MovementIds(expected);
    }

    MovementIds ids() {
        return ids;
    }

    boolean isReversed(long sequence) {
        return reversed.get(Math.toIntExact(sequence));
    }

    /** The newest sequence number, 0 before the first. */
    long last() {
        return last;
    }

    void remember(long sequence, long idHigh, long idLow, long reverses) {
        ids.put(idHigh, idLow, Math.toIntExact(sequence));
        if (reverses != 0) {
            reversed.set(Math.toIntExact(reverses));
        }
        last = sequence;
    }
}
