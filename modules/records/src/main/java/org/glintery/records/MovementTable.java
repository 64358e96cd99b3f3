package org.glintery.records;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.UUID;
import org.glintery.api.GlinteryException;

/** The ledger's rows. The sequence number is the only index. Writer thread. */
final class MovementTable {
    private static final String COLUMNS =
            "seq, id_high, id_low, kind, drill, from_spot, to_spot, quantity, from_variance,"
                    + " from_uncounted, to_variance, to_uncounted, lot, basis, said, uncertainty, reason, happened, recorded,"
                    + " reverses, change";
    /** H2 holds a whole result; a longer one it puts into a file of its own first. */
    private static final int READ_AT_ONCE = 20_000;

    private final Connection connection;
    private final PreparedStatement insert;
    private final PreparedStatement byNumber;

    /** Sees each row's numbers while opening, without making objects of them. */
    interface Scan {
        void row(ResultSet row) throws SQLException;
    }

    MovementTable(Connection connection) throws SQLException {
        this.connection = connection;
        insert = connection.prepareStatement(
                "insert into movement(" + COLUMNS + ") values(?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?)");
        byNumber = connection.prepareStatement("select " + COLUMNS + " from movement where seq = ?");
    }

    void insert(List<MovementRow> rows) throws SQLException {
        if (rows.isEmpty()) {
            return;
        }
        for (MovementRow row : rows) {
            bind(row);
            if (rows.size() == 1) {
                insert.executeUpdate();
                return;
            }
            insert.addBatch();
        }
        insert.executeBatch();
    }

    private void bind(MovementRow row) throws SQLException {
        Effect effect = row.effect();
        insert.setLong(1, row.sequence());
        insert.setLong(2, row.id().getMostSignificantBits());
        insert.setLong(3, row.id().getLeastSignificantBits());
        insert.setByte(4, (byte) DiskCodes.MOVEMENTS.of(row.kind()));
        insert.setInt(5, effect.drill());
        insert.setInt(6, effect.from());
        insert.setInt(7, effect.to());
        insert.setLong(8, effect.count());
        insert.setLong(9, effect.fromVariance());
        insert.setInt(10, effect.fromUncounted());
        insert.setLong(11, effect.toVariance());
        insert.setInt(12, effect.toUncounted());
        insert.setInt(13, row.lot());
        insert.setByte(14, (byte) row.basis());
        insert.setLong(15, row.said());
        insert.setLong(16, row.uncertainty());
        insert.setInt(17, row.reason());
        insert.setInt(18, row.happened());
        insert.setLong(19, EpochNanos.of(row.recordedAt()));
        insert.setLong(20, row.reverses());
        insert.setLong(21, row.change());
    }

    MovementRow row(long sequence) throws SQLException {
        byNumber.setLong(1, sequence);
        try (ResultSet rows = byNumber.executeQuery()) {
            if (!rows.next()) {
                throw new GlinteryException("movement " + sequence + " is missing from the ledger");
            }
            return read(rows);
        }
    }

    /** Rows from a number on, oldest first. @param drill and spot: only those, when given */
    List<MovementRow> rows(long from, int most, OptionalInt drill, OptionalInt spot) throws SQLException {
        String where = " where seq >= ?" + (drill.isPresent() ? " and drill = " + drill.getAsInt() : "")
                + (spot.isPresent()
                        ? " and (from_spot = " + spot.getAsInt() + " or to_spot = " + spot.getAsInt() + ")"
                        : "");
        try (PreparedStatement select =
                connection.prepareStatement("select " + COLUMNS + " from movement" + where + " order by seq limit ?")) {
            select.setLong(1, from);
            select.setInt(2, most);
            try (ResultSet rows = select.executeQuery()) {
                var found = new ArrayList<MovementRow>();
                while (rows.next()) {
                    found.add(read(rows));
                }
                return found;
            }
        }
    }

    /** How many there are, which is also the newest number: the ledger has no gaps. */
    long count() throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("select count(*) from movement");
                ResultSet rows = select.executeQuery()) {
            rows.next();
            return rows.getLong(1);
        }
    }

    /** Columns: seq, id_high, id_low, reverses, drill, from, to, count, variances and uncounted of both sides. */
    void scan(Scan scan) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(
                "select seq, id_high, id_low, reverses, drill, from_spot, to_spot, quantity, from_variance,"
                        + " from_uncounted, to_variance, to_uncounted from movement where seq between ? and ?"
                        + " order by seq")) {
            long last = count();
            for (long first = 1; first <= last; first += READ_AT_ONCE) {
                select.setLong(1, first);
                select.setLong(2, first + READ_AT_ONCE - 1);
                try (ResultSet rows = select.executeQuery()) {
                    while (rows.next()) {
                        scan.row(rows);
                    }
                }
            }
        }
    }

    private static MovementRow read(ResultSet row) throws SQLException {
        return new MovementRow(
                row.getLong(1),
                new UUID(row.getLong(2), row.getLong(3)),
                DiskCodes.MOVEMENTS.constant(row.getByte(4)),
                new Effect(
                        row.getInt(5),
                        row.getInt(6),
                        row.getInt(7),
                        row.getLong(8),
                        row.getLong(9),
                        row.getInt(10),
                        row.getLong(11),
                        row.getInt(12)),
                row.getInt(13),
                row.getByte(14),
                row.getLong(15),
                row.getLong(16),
                row.getInt(17),
                row.getInt(18),
                EpochNanos.of(row.getLong(19)),
                row.getLong(20),
                row.getLong(21));
    }
}
