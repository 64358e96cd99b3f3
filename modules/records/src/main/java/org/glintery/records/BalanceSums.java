package org.glintery.records;

import java.util.Arrays;

/**
 * Sums by spot and drill while the ledger is added up, by open addressing in flat arrays: an object for each would take
 * longer to make than its row to read. Writer thread.
 */
final class BalanceSums {
    private static final long FREE = -1;

    private long[] keys = new long[256];
    private long[] counts = new long[keys.length];
    private long[] variances = new long[keys.length];
    private int[] uncounted = new int[keys.length];
    private int size;

    BalanceSums() {
        Arrays.fill(keys, FREE);
    }

    void add(int spot, int drill, long count, long variance, int uncountedMore) {
        if ((size + 1) * 2 > keys.length) {
            grow();
        }
        long key = OpenedBalances.key(spot, drill);
        int place = slot(key);
        if (keys[place] == FREE) {
            keys[place] = key;
            size++;
        }
        counts[place] = Math.addExact(counts[place], count);
        variances[place] = Math.addExact(variances[place], variance);
        uncounted[place] += uncountedMore;
    }

    /** Where a key's sums are. */
    int place(long key) {
        return slot(key);
    }

    long count(int place) {
        return counts[place];
    }

    long variance(int place) {
        return variances[place];
    }

    int uncounted(int place) {
        return uncounted[place];
    }

    /** Those whose sums are not all zero, in no order. */
    long[] keys() {
        long[] found = new long[size];
        int next = 0;
        for (int place = 0; place < keys.length; place++) {
            if (keys[place] != FREE && (counts[place] != 0 || variances[place] != 0 || uncounted[place] != 0)) {
                found[next++] = keys[place];
            }
        }
        return Arrays.copyOf(found, next);
    }

    private int slot(long key) {
        int mask = keys.length - 1;
        int place = (int) (key * 0x9E3779B97F4A7C15L >>> 32) & mask;
        while (keys[place] != FREE && keys[place] != key) {
            place = place + 1 & mask;
        }
        return place;
    }

    private void grow() {
        long[] oldKeys = keys;
        long[] oldCounts = counts;
        long[] oldVariances = variances;
        int[] oldUncounted = uncounted;
        keys = new long[oldKeys.length * 2];
        Arrays.fill(keys, FREE);
        counts = new long[keys.length];
        variances = new long[keys.length];
        uncounted = new int[keys.length];
        for (int old = 0; old < oldKeys.length; old++) {
            if (oldKeys[old] != FREE) {
                int place = slot(oldKeys[old]);
                keys[place] = oldKeys[old];
                counts[place] = oldCounts[old];
                variances[place] = oldVariances[old];
                uncounted[place] = oldUncounted[old];
            }
        }
    }
}
