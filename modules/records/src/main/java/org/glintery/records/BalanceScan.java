package org.glintery.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import org.glintery.api.ledger.Spot;

/** Adds the ledger up from its first row. Writer thread. */
final class BalanceScan implements MovementTable.Scan {
    private final LedgerMemory memory;
    private final BalanceSums sums = new BalanceSums();

    BalanceScan(LedgerMemory memory) {
        this.memory = memory;
    }

    @Override
    public void row(ResultSet row) throws SQLException {
        memory.remember(row.getLong(1), row.getLong(2), row.getLong(3), row.getLong(4));
        int drill = row.getInt(5);
        long count = row.getLong(8);
        sums.add(row.getInt(6), drill, -count, row.getLong(9), row.getInt(10));
        sums.add(row.getInt(7), drill, count, row.getLong(11), row.getInt(12));
    }

    BalanceMap balances(NumberedNames<Spot> spots) {
        return BalanceMap.opened(
                OpenedBalances.of(sums, spot -> spots.value(spot).inTheHouse()));
    }
}
