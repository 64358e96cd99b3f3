package org.glintery.records;

import java.util.HashMap;
import java.util.Map;

/** What the writer remembers of the ledger besides the balances: which ids there are, what was reversed by what. */
final class LedgerMemory {
    private final MovementIds ids;
    private final Map<Long, Long> reversers = new HashMap<>();
    private long last;

    LedgerMemory(int expected) {
        ids = new MovementIds(expected);
    }

    MovementIds ids() {
        return ids;
    }

    /** The number of the entry that reverses another, 0 without. */
    long reverser(long sequence) {
        return reversers.getOrDefault(sequence, 0L);
    }

    /** The newest sequence number, 0 before the first. */
    long last() {
        return last;
    }

    void remember(long sequence, long idHigh, long idLow, long reverses) {
        ids.put(idHigh, idLow, Math.toIntExact(sequence));
        if (reverses != 0) {
            reversers.put(reverses, sequence);
        }
        last = sequence;
    }
}
