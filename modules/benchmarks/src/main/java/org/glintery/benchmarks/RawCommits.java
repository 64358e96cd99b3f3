package org.glintery.benchmarks;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;

/** The bare database: a row inserted, committed and synced to the disk, again and again. */
final class RawCommits implements AutoCloseable {

    private final Connection connection;
    private final Statement statement;
    private final PreparedStatement insert;
    private long row;

    RawCommits(Path file) throws SQLException {
        connection = DriverManager.getConnection("jdbc:h2:file:" + file.toAbsolutePath() + ";WRITE_DELAY=0", "sa", "");
        statement = connection.createStatement();
        statement.execute(
                "create table booked(no bigint primary key, id_high bigint, id_low bigint, drill int, from_spot int,"
                        + " to_spot int, quantity bigint, reason varchar)");
        connection.setAutoCommit(false);
        insert = connection.prepareStatement("insert into booked values(?,?,?,?,?,?,?,?)");
    }

    /** So many rows, each durable before the next. @return seconds */
    double insert(int rows) throws SQLException {
        long start = System.nanoTime();
        for (int i = 0; i < rows; i++) {
            insert.setLong(1, ++row);
            insert.setLong(2, row * 0x9E3779B97F4A7C15L);
            insert.setLong(3, row * 0xC2B2AE3D27D4EB4FL);
            insert.setInt(4, (int) (row % 450));
            insert.setInt(5, 0);
            insert.setInt(6, (int) (row % 60));
            insert.setLong(7, row % 400);
            insert.setString(8, "bought");
            insert.executeUpdate();
            connection.commit();
            statement.execute("checkpoint sync");
        }
        return (System.nanoTime() - start) / 1e9;
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
