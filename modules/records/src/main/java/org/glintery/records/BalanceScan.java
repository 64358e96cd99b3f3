package org.glintery.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Spot;
import org.pcollections.IntTreePMap;

/** Adds the ledger up from its first row, with plain numbers, and makes balances of the sums at the end. */
final class BalanceScan implements MovementTable.Scan {
    private final LedgerMemory memory;
    /** By the number of the spot, then of the drill. */
    private final List<Map<Integer, Sum>> sums = new ArrayList<>();

    private static final class Sum {
        private long count;
        private long variance;
        private int uncounted;
    }

    BalanceScan(LedgerMemory memory) {
        this.memory = memory;
    }

    @Override
    public void row(ResultSet row) throws SQLException {
        memory.remember(row.getLong(1), row.getLong(2), row.getLong(3), row.getLong(4));
        int drill = row.getInt(5);
        long count = row.getLong(8);
        add(row.getInt(6), drill, -count, row.getLong(9), row.getInt(10));
        add(row.getInt(7), drill, count, row.getLong(11), row.getInt(12));
    }

    private void add(int spot, int drill, long count, long variance, int uncounted) {
        while (sums.size() <= spot) {
            sums.add(new HashMap<>());
        }
        Sum sum = sums.get(spot).computeIfAbsent(drill, number -> new Sum());
        sum.count = Math.addExact(sum.count, count);
        sum.variance = Math.addExact(sum.variance, variance);
        sum.uncounted += uncounted;
    }

    BalanceMap balances(NumberedNames<Spot> spots) {
        Map<Integer, IntTreePMap<Balance>> bySpot = new HashMap<>();
        Map<Integer, IntTreePMap<Balance>> byDrill = new HashMap<>();
        Map<Integer, Long> house = new HashMap<>();
        for (int number = 0; number < sums.size(); number++) {
            int spot = number;
            boolean inTheHouse = spots.value(spot).inTheHouse();
            sums.get(spot).forEach((drill, sum) -> {
                var balance = new Balance(sum.count, sum.variance, sum.uncounted);
                if (!balance.isZero()) {
                    bySpot.merge(spot, IntTreePMap.singleton(drill, balance), (row, one) -> row.plus(drill, balance));
                    byDrill.merge(drill, IntTreePMap.singleton(spot, balance), (row, one) -> row.plus(spot, balance));
                    if (inTheHouse) {
                        house.merge(drill, sum.count, Math::addExact);
                    }
                }
            });
        }
        return new BalanceMap(persistent(bySpot), persistent(byDrill), persistent(house));
    }

    private static <T> IntTreePMap<T> persistent(Map<Integer, T> map) {
        IntTreePMap<T> made = IntTreePMap.empty();
        for (Map.Entry<Integer, T> entry : map.entrySet()) {
            made = made.plus(entry.getKey(), entry.getValue());
        }
        return made;
    }
}
