package org.glintery.records;

import java.util.UUID;

/**
 * Ids with the sequence number each belongs to, by open addressing in flat arrays: 20 bytes an id at a load
 * of at most five eighths, so that half a million movements take some 32 MB at worst. Writer thread only.
 */
final class MovementIds {
    private long[] high;
    private long[] low;
    private int[] sequence;
    private int size;

    MovementIds(int expected) {
        allocate(Math.max(64, Integer.highestOneBit(Math.max(1, expected)) * 4));
    }

    private void allocate(int slots) {
        high = new long[slots];
        low = new long[slots];
        sequence = new int[slots];
    }

    /** The sequence number of an id, 0 when it is not known. */
    int find(UUID id) {
        return sequence[slot(id.getMostSignificantBits(), id.getLeastSignificantBits())];
    }

    void put(long idHigh, long idLow, int number) {
        if ((size + 1) * 8L > sequence.length * 5L) {
            grow();
        }
        int slot = slot(idHigh, idLow);
        if (sequence[slot] == 0) {
            size++;
        }
        high[slot] = idHigh;
        low[slot] = idLow;
        sequence[slot] = number;
    }

    int size() {
        return size;
    }

    private int slot(long idHigh, long idLow) {
        int mask = sequence.length - 1;
        long mixed = (idHigh ^ Long.rotateLeft(idLow, 29)) * 0x9E3779B97F4A7C15L;
        int slot = (int) (mixed >>> 32) & mask;
        while (sequence[slot] != 0 && (high[slot] != idHigh || low[slot] != idLow)) {
            slot = (slot + 1) & mask;
        }
        return slot;
    }

    private void grow() {
        long[] oldHigh = high;
        long[] oldLow = low;
        int[] oldSequence = sequence;
        allocate(oldSequence.length * 2);
        for (int i = 0; i < oldSequence.length; i++) {
            if (oldSequence[i] != 0) {
                int slot = slot(oldHigh[i], oldLow[i]);
                high[slot] = oldHigh[i];
                low[slot] = oldLow[i];
                sequence[slot] = oldSequence[i];
            }
        }
    }
}
