package org.glintery.records;

import org.glintery.api.ledger.Balance;
import org.pcollections.IntTreePMap;

/**
 * Balances by the numbers of spot and drill, both ways round, and what lies in bags and pockets of each
 * drill. Zero balances are not held. Immutable; any thread.
 */
record BalanceMap(
        IntTreePMap<IntTreePMap<Balance>> bySpot,
        IntTreePMap<IntTreePMap<Balance>> byDrill,
        IntTreePMap<Long> inTheHouse) {
    static final BalanceMap EMPTY = new BalanceMap(IntTreePMap.empty(), IntTreePMap.empty(), IntTreePMap.empty());

    Balance at(int spot, int drill) {
        IntTreePMap<Balance> drills = bySpot.get(spot);
        Balance found = drills == null ? null : drills.get(drill);
        return found == null ? Balance.ZERO : found;
    }

    long house(int drill) {
        Long count = inTheHouse.get(drill);
        return count == null ? 0 : count;
    }

    /** @param house whether the spot is a bag or a pocket */
    BalanceMap with(int spot, int drill, Balance balance, boolean house) {
        long more = house ? balance.count() - at(spot, drill).count() : 0;
        return new BalanceMap(
                set(bySpot, spot, drill, balance),
                set(byDrill, drill, spot, balance),
                more == 0 ? inTheHouse : inTheHouse.plus(drill, Math.addExact(house(drill), more)));
    }

    private static IntTreePMap<IntTreePMap<Balance>> set(
            IntTreePMap<IntTreePMap<Balance>> all, int outer, int inner, Balance balance) {
        IntTreePMap<Balance> row = all.get(outer);
        if (row == null) {
            row = IntTreePMap.empty();
        }
        IntTreePMap<Balance> changed = balance.isZero() ? row.minus((Object) inner) : row.plus(inner, balance);
        return changed.isEmpty() ? all.minus((Object) outer) : all.plus(outer, changed);
    }
}
