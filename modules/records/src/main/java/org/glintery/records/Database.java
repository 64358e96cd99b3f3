package org.glintery.records;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.glintery.api.disk.FolderNames;
import org.h2.jdbcx.JdbcDataSource;

/**
 * The one connection to the workshop's H2 file. What was acknowledged survives a killed process and a power cut by the
 * {@link Journal}; the file itself is synced every few seconds. An interrupt in a write would close the file for everyone,
 * so only the writer thread, which nobody interrupts, comes here.
 */
final class Database {
    private static final Logger LOG = Logger.getLogger(Database.class.getName());
    static final String FILE = "glintery.mv.db";
    /** Well below the 45 s after which H2 may use freed parts of its file again. */
    private static final long SYNC_EVERY_NS = 5_000_000_000L;

    /**
     * H2 must not write by itself: its background writer takes the tables one after another while the writer thread goes
     * on changing them. In 2 of 80 kills the file then held rows of a change that nothing on disk could take back, and
     * opening waited for that change for ever. So H2 writes on the writer thread alone.
     */
    private static final String NEVER_BY_ITSELF = ";WRITE_DELAY=" + Integer.MAX_VALUE;

    private static final long WORTH_COMPACTING = 16L << 20;

    private final Path file;
    private final Connection connection;
    private final Statement checkpoint;
    private long compacted;
    private long synced = System.nanoTime();
    private boolean inDoubt;

    private Database(Path file, Connection connection) throws SQLException {
        this.file = file;
        this.connection = connection;
        this.checkpoint = connection.createStatement();
    }

    static Database open(Path folder) throws SQLException {
        var source = new JdbcDataSource();
        String name = folder.toAbsolutePath().resolve("glintery").toString();
        source.setURL("jdbc:h2:file:" + name + ";DB_CLOSE_ON_EXIT=FALSE;TRACE_LEVEL_FILE=0;CACHE_SIZE=32768"
                + NEVER_BY_ITSELF);
        source.setUser("sa");
        source.setPassword("");
        Connection connection = source.getConnection();
        try {
            connection.setAutoCommit(false);
            var database = new Database(folder.resolve(FILE), connection);
            database.compacted = database.size();
            return database;
        } catch (SQLException e) {
            connection.close();
            throw e;
        }
    }

    Connection connection() {
        return connection;
    }

    /**
     * Commits. If that fails nobody can tell how far it came, and the database is closed: opening it again shows what it
     * holds.
     */
    void commit() throws SQLException {
        try {
            connection.commit();
            if (System.nanoTime() - synced > SYNC_EVERY_NS) {
                sync();
            }
        } catch (SQLException e) {
            abandon();
            throw e;
        }
    }

    /** Puts all that is committed on the disk. */
    void sync() throws SQLException {
        checkpoint.execute("checkpoint sync");
        synced = System.nanoTime();
    }

    private void abandon() {
        inDoubt = true;
        try {
            checkpoint.execute("shutdown immediately");
        } catch (SQLException e) {
            LOG.log(Level.FINE, "closing after a failed commit", e);
        }
    }

    void rollback() {
        try {
            connection.rollback();
        } catch (SQLException e) {
            // the failure that led here is told; a closed database has nothing left to take back
            LOG.log(Level.FINE, "rollback", e);
        }
    }

    boolean isClosed() {
        try {
            return inDoubt || connection.isClosed() || !connection.isValid(0);
        } catch (SQLException e) {
            return true;
        }
    }

    /** A consistent copy of the database as a zip with one file in it. */
    void copyTo(Path zip) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute("backup to '" + zip.toString().replace("'", "''") + "'");
        }
    }

    /**
     * Rewrites the file on closing only when it has grown much: a short verb must not pay for it. False when the database
     * could not be closed in order, such as on a full disk: then the journal is still needed.
     */
    boolean close() {
        if (isClosed()) {
            return false;
        }
        try {
            shutDown();
            return true;
        } catch (SQLException | IOException e) {
            LOG.warning("the database was not closed in order; the journal keeps what it lacks");
            LOG.log(Level.FINE, "closing", e);
            return false;
        }
    }

    private void shutDown() throws SQLException, IOException {
        rollback(); // closing would commit what is open
        try {
            // closing says nothing when it can't write: this does
            sync();
        } catch (SQLException e) {
            abandon();
            throw e;
        }
        long size = size();
        boolean grown = size > WORTH_COMPACTING && size > compacted + compacted / 2;
        if (grown && Files.getFileStore(file).getUsableSpace() > 2 * size) {
            checkpoint.execute("shutdown compact");
        } else {
            checkpoint.execute("shutdown");
        }
        try (FileChannel written = FileChannel.open(file, StandardOpenOption.WRITE)) {
            written.force(true);
        }
        FolderNames.sync(file.toAbsolutePath().getParent());
    }

    private long size() {
        try {
            return Files.size(file);
        } catch (IOException e) {
            return 0;
        }
    }
}
