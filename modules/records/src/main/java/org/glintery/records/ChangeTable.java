package org.glintery.records;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.glintery.api.GlinteryException;

/** The applied changes. Writer thread. */
final class ChangeTable {
    private static final String COLUMNS =
            "select seq, id_high, id_low, sentence, recorded, kind, undoes, first_movement, movements from change";

    /** H2 holds a whole result; a longer one it puts into a file of its own first. */
    private static final int READ_AT_ONCE = 20_000;

    private final Connection connection;
    private final PreparedStatement insert;
    private final PreparedStatement byNumber;

    ChangeTable(Connection connection) throws SQLException {
        this.connection = connection;
        insert = connection.prepareStatement("insert into change values(?,?,?,?,?,?,?,?,?)");
        byNumber = connection.prepareStatement(COLUMNS + " where seq = ?");
    }

    void insert(ChangeRow row) throws SQLException {
        insert.setLong(1, row.number());
        insert.setLong(2, row.id().getMostSignificantBits());
        insert.setLong(3, row.id().getLeastSignificantBits());
        insert.setString(4, row.sentence());
        insert.setLong(5, EpochNanos.of(row.recordedAt()));
        insert.setByte(6, (byte) DiskCodes.CHANGES.of(row.kind()));
        insert.setLong(7, row.undoes());
        insert.setLong(8, row.firstMovement());
        insert.setInt(9, row.movements());
        insert.executeUpdate();
    }

    ChangeRow row(long number) throws SQLException {
        byNumber.setLong(1, number);
        try (ResultSet rows = byNumber.executeQuery()) {
            if (!rows.next()) {
                throw new GlinteryException("change " + number + " is missing from the history");
            }
            return read(rows);
        }
    }

    /** The number of the newest change, 0 before the first. */
    long last() throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("select max(seq) from change");
                ResultSet rows = select.executeQuery()) {
            rows.next();
            return rows.getLong(1);
        }
    }

    /** The newest first. */
    List<ChangeRow> newest(int most) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(COLUMNS + " order by seq desc limit ?")) {
            select.setInt(1, most);
            try (ResultSet rows = select.executeQuery()) {
                var found = new ArrayList<ChangeRow>();
                while (rows.next()) {
                    found.add(read(rows));
                }
                return found;
            }
        }
    }

    /** The ids of all changes. */
    void loadIds(MovementIds into) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(
                "select seq, id_high, id_low from change where seq between ? and ? order by seq")) {
            long last = last();
            for (long first = 1; first <= last; first += READ_AT_ONCE) {
                select.setLong(1, first);
                select.setLong(2, first + READ_AT_ONCE - 1);
                try (ResultSet rows = select.executeQuery()) {
                    while (rows.next()) {
                        into.put(rows.getLong(2), rows.getLong(3), Math.toIntExact(rows.getLong(1)));
                    }
                }
            }
        }
    }

    private static ChangeRow read(ResultSet row) throws SQLException {
        return new ChangeRow(
                row.getLong(1),
                new UUID(row.getLong(2), row.getLong(3)),
                row.getString(4),
                EpochNanos.of(row.getLong(5)),
                DiskCodes.CHANGES.constant(row.getByte(6)),
                row.getLong(7),
                row.getLong(8),
                row.getInt(9));
    }
}
