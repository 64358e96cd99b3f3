package org.glintery.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
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
        List<Row> rows = new ArrayList<>();
        Map<Integer, Map<Integer, Balance>> byDrill = new HashMap<>();
        Map<Integer, Long> house = new HashMap<>();
        for (int spot = 0; spot < sums.size(); spot++) {
            Map<Integer, Balance> drills = new HashMap<>();
            boolean inTheHouse = spots.value(spot).inTheHouse();
            for (Map.Entry<Integer, Sum> one : sums.get(spot).entrySet()) {
                Sum sum = one.getValue();
                var balance = new Balance(sum.count, sum.variance, sum.uncounted);
                if (!balance.isZero()) {
                    drills.put(one.getKey(), balance);
                    byDrill.computeIfAbsent(one.getKey(), drill -> new HashMap<>())
                            .put(spot, balance);
                    if (inTheHouse) {
                        house.merge(one.getKey(), sum.count, Math::addExact);
                    }
                }
            }
            rows.add(new Row(spot, drills));
        }
        List<Row> columns = byDrill.entrySet().stream()
                .map(one -> new Row(one.getKey(), one.getValue()))
                .toList();
        return new BalanceMap(nested(rows), nested(columns), persistent(house));
    }

    private record Row(int number, Map<Integer, Balance> balances) {}

    /** Each row is a tree of its own, so that they can be built side by side. */
    private static IntTreePMap<IntTreePMap<Balance>> nested(List<Row> rows) {
        Map<Integer, IntTreePMap<Balance>> trees = rows.parallelStream()
                .filter(row -> !row.balances().isEmpty())
                .collect(Collectors.toMap(Row::number, row -> persistent(row.balances())));
        return persistent(trees);
    }

    private static <T> IntTreePMap<T> persistent(Map<Integer, T> map) {
        IntTreePMap<T> made = IntTreePMap.empty();
        for (Map.Entry<Integer, T> entry : map.entrySet()) {
            made = made.plus(entry.getKey(), entry.getValue());
        }
        return made;
    }
}
