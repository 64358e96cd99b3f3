package org.glintery.records;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;
import java.util.Properties;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.glintery.api.workshop.Workshop.BackedUp;

/**
 * When the last backup was written, in a small file beside the database. It is no document: a backup is not a change of
 * the workshop, and undo has nothing to take back. Disk.
 */
final class LastBackup {
    static final String FILE = "last-backup.properties";
    private static final Logger LOG = Logger.getLogger(LastBackup.class.getName());
    private final Path file;

    LastBackup(Path folder) {
        file = folder.resolve(FILE);
    }

    /** The backup stands also when this can't be remembered. */
    void remember(Instant at, Path backup) {
        Properties told = new Properties();
        told.setProperty("at", at.toString());
        told.setProperty("file", backup.toAbsolutePath().toString());
        try (Writer out = Files.newBufferedWriter(file)) {
            told.store(out, null);
        } catch (IOException e) {
            LOG.log(Level.INFO, "The day of the backup could not be remembered", e);
        }
    }

    /** Empty before the first one, and when the file was damaged. */
    Optional<BackedUp> read() {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        Properties told = new Properties();
        try (Reader in = Files.newBufferedReader(file)) {
            told.load(in);
            return Optional.of(new BackedUp(Instant.parse(told.getProperty("at", "")), told.getProperty("file", "")));
        } catch (IOException | DateTimeException | IllegalArgumentException e) {
            LOG.log(Level.INFO, "The day of the last backup can't be read", e);
            return Optional.empty();
        }
    }
}
