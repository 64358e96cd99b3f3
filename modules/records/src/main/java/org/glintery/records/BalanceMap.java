package org.glintery.records;

import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.glintery.api.ledger.Balance;
import org.pcollections.IntTreePMap;

/**
 * Balances by the numbers of spot and drill, both ways round, and what lies in bags and pockets of each drill: those of
 * opening, and over them what changed since, zeros among it. Immutable; any thread.
 */
record BalanceMap(
        OpenedBalances opened,
        IntTreePMap<IntTreePMap<Balance>> changedBySpot,
        IntTreePMap<IntTreePMap<Balance>> changedByDrill,
        IntTreePMap<Long> changedInTheHouse) {
    static final BalanceMap EMPTY = opened(OpenedBalances.NONE);

    static BalanceMap opened(OpenedBalances opened) {
        return new BalanceMap(opened, IntTreePMap.empty(), IntTreePMap.empty(), IntTreePMap.empty());
    }

    Balance at(int spot, int drill) {
        IntTreePMap<Balance> drills = changedBySpot.get(spot);
        Balance changed = drills == null ? null : drills.get(drill);
        return changed == null ? opened.at(spot, drill) : changed;
    }

    long house(int drill) {
        Long count = changedInTheHouse.get(drill);
        return count == null ? opened.house(drill) : count;
    }

    /** @param house whether the spot is a bag or a pocket */
    BalanceMap with(int spot, int drill, Balance balance, boolean house) {
        long more = house ? balance.count() - at(spot, drill).count() : 0;
        return new BalanceMap(
                opened,
                set(changedBySpot, spot, drill, balance),
                set(changedByDrill, drill, spot, balance),
                more == 0 ? changedInTheHouse : changedInTheHouse.plus(drill, Math.addExact(house(drill), more)));
    }

    private static IntTreePMap<IntTreePMap<Balance>> set(
            IntTreePMap<IntTreePMap<Balance>> all, int outer, int inner, Balance balance) {
        IntTreePMap<Balance> row = all.get(outer);
        return all.plus(outer, (row == null ? IntTreePMap.<Balance>empty() : row).plus(inner, balance));
    }

    /** What lies in a spot, by the number of the drill; no zeros. */
    SortedMap<Integer, Balance> in(int spot) {
        var drills = new TreeMap<Integer, Balance>();
        opened.eachIn(spot, drills::put);
        return changed(drills, changedBySpot.get(spot));
    }

    /** Where a drill lies, by the number of the spot; no zeros. */
    SortedMap<Integer, Balance> of(int drill) {
        var spots = new TreeMap<Integer, Balance>();
        opened.eachOf(drill, spots::put);
        return changed(spots, changedByDrill.get(drill));
    }

    private static SortedMap<Integer, Balance> changed(TreeMap<Integer, Balance> row, Map<Integer, Balance> changes) {
        if (changes != null) {
            row.putAll(changes);
            row.values().removeIf(Balance::isZero);
        }
        return row;
    }

    /** The numbers of the spots that hold something. */
    SortedSet<Integer> spots() {
        var spots = new TreeSet<Integer>();
        for (int spot : opened.spots()) {
            spots.add(spot);
        }
        for (int spot : changedBySpot.keySet()) {
            if (in(spot).isEmpty()) {
                spots.remove(spot);
            } else {
                spots.add(spot);
            }
        }
        return spots;
    }
}
