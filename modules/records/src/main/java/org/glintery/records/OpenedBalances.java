package org.glintery.records;

import java.util.Arrays;
import java.util.function.BiConsumer;
import java.util.function.IntPredicate;
import org.glintery.api.ledger.Balance;

/**
 * The balances as the ledger adds up at opening, in plain arrays that are made quickly and never change. A key is the
 * number of the spot before that of the drill, or the other way round. Immutable; any thread.
 */
final class OpenedBalances {
    static final OpenedBalances NONE = of(new BalanceSums(), spot -> false);

    private final long[] bySpot;
    private final long[] counts;
    private final long[] variances;
    private final int[] uncounted;
    private final long[] byDrill;
    private final long[] house;

    private OpenedBalances(
            long[] bySpot, long[] counts, long[] variances, int[] uncounted, long[] byDrill, long[] house) {
        this.bySpot = bySpot;
        this.counts = counts;
        this.variances = variances;
        this.uncounted = uncounted;
        this.byDrill = byDrill;
        this.house = house;
    }

    /** @param inTheHouse whether a spot is a bag or a pocket */
    static OpenedBalances of(BalanceSums sums, IntPredicate inTheHouse) {
        long[] bySpot = sums.keys();
        Arrays.sort(bySpot);
        int size = bySpot.length;
        long[] counts = new long[size];
        long[] variances = new long[size];
        int[] uncounted = new int[size];
        long[] byDrill = new long[size];
        long[] house = new long[0];
        for (int i = 0; i < size; i++) {
            int spot = outer(bySpot[i]);
            int drill = inner(bySpot[i]);
            int place = sums.place(bySpot[i]);
            counts[i] = sums.count(place);
            variances[i] = sums.variance(place);
            uncounted[i] = sums.uncounted(place);
            byDrill[i] = key(drill, spot);
            if (inTheHouse.test(spot)) {
                if (drill >= house.length) {
                    house = Arrays.copyOf(house, Math.max(drill + 1, house.length * 2));
                }
                house[drill] = Math.addExact(house[drill], counts[i]);
            }
        }
        Arrays.sort(byDrill);
        return new OpenedBalances(bySpot, counts, variances, uncounted, byDrill, house);
    }

    static long key(int outer, int inner) {
        return (long) outer << Integer.SIZE | inner;
    }

    static int outer(long key) {
        return (int) (key >>> Integer.SIZE);
    }

    static int inner(long key) {
        return (int) key;
    }

    Balance at(int spot, int drill) {
        int place = Arrays.binarySearch(bySpot, key(spot, drill));
        return place < 0 ? Balance.ZERO : balance(place);
    }

    private Balance balance(int place) {
        return new Balance(counts[place], variances[place], uncounted[place]);
    }

    long house(int drill) {
        return drill < house.length ? house[drill] : 0;
    }

    void eachIn(int spot, BiConsumer<Integer, Balance> each) {
        for (int i = first(bySpot, spot); i < bySpot.length && outer(bySpot[i]) == spot; i++) {
            each.accept(inner(bySpot[i]), balance(i));
        }
    }

    void eachOf(int drill, BiConsumer<Integer, Balance> each) {
        for (int i = first(byDrill, drill); i < byDrill.length && outer(byDrill[i]) == drill; i++) {
            int spot = inner(byDrill[i]);
            each.accept(spot, at(spot, drill));
        }
    }

    /** Where the keys of an outer number begin. */
    private static int first(long[] keys, int outer) {
        int place = Arrays.binarySearch(keys, key(outer, 0));
        return place < 0 ? -place - 1 : place;
    }

    /** The numbers of the spots that hold something, ascending. */
    int[] spots() {
        return Arrays.stream(bySpot).mapToInt(OpenedBalances::outer).distinct().toArray();
    }
}
