package org.glintery.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.glintery.api.GlinteryException;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.workshop.Workshop;
import org.openide.util.NbBundle.Messages;

/** Opens the database of a folder whose lock is held, and brings an older one up to date first. Not on the event thread. */
@Messages({
    "workshop-newer=This workshop was written by a newer Glintery. Nothing was changed; update Glintery to open it.",
    "workshop-unreadable=The database of this workshop is damaged and can't be read. Nothing was changed; keep a copy of the folder, and restore a backup into a new one.",
    "workshop-emptied=The database of this workshop is empty, though its folder is not new. Nothing was changed; restore a backup into a new folder. If it was never used, delete the folder and make the workshop anew.",
    "# {0} - the file",
    "journal-damaged=The file {0} of this workshop is damaged, and opening it would lose the newest changes. Nothing was changed; keep a copy of the folder, and restore a backup into a new one.",
    "folder-name=A workshop can not be in a folder with a semicolon in its name. Nothing was changed; rename the folder or choose another.",
    "workshop-foreign=This database holds more than a workshop does, and was not opened. Nothing was changed; a backup can be restored into a new folder."
})
final class WorkshopOpening {
    private static final Logger LOG = Logger.getLogger(WorkshopOpening.class.getName());

    private final JacksonCodec codec;
    private final Clock clock;
    private final ChangeMaking.StepWatch watch;
    private final Schema schema;

    WorkshopOpening(JacksonCodec codec, Clock clock, ChangeMaking.StepWatch watch, Schema schema) {
        this.codec = codec;
        this.clock = clock;
        this.watch = watch;
        this.schema = schema;
    }

    /** A new workshop. */
    Result<Workshop> make(Path folder, WorkshopLock lock) {
        return opened(folder, lock, true);
    }

    /**
     * A workshop that is there. Its database is made anew only where the journal holds everything, such as when the process
     * was killed at once: an emptied one would look like a workshop without pieces.
     */
    Result<Workshop> open(Path folder, WorkshopLock lock) {
        boolean journalled;
        try {
            journalled = Journal.isUsed(folder);
            if (!journalled && Files.size(folder.resolve(Database.FILE)) == 0) {
                return Result.refused("unreadable", Bundle.workshop_emptied());
            }
        } catch (IOException e) {
            return Result.refused(DiskRefusals.of(e, false));
        }
        return opened(folder, lock, journalled);
    }

    private Result<Workshop> opened(Path folder, WorkshopLock lock, boolean make) {
        if (folder.toAbsolutePath().toString().contains(";")) {
            return Result.refused("folder-name", Bundle.folder_name());
        }
        Database database;
        try {
            database = Database.open(folder);
        } catch (SQLException e) {
            return Result.refused(unreadable(e));
        }
        try {
            int version = Schema.version(database.connection());
            Optional<Refusal> refusal = refusal(database, version, make);
            if (refusal.isPresent()) {
                database.close();
                return Result.refused(refusal.get());
            }
            if (version > 0 && version < schema.version()) {
                database.close();
                return updated(folder, version, lock);
            }
            return Result.ok(over(folder, database, lock), RemoteFolders.warnings(folder));
        } catch (SQLException | IOException | GlinteryException | NumberFormatException e) {
            database.close();
            return Result.refused(unreadable(e));
        }
    }

    private Optional<Refusal> refusal(Database database, int version, boolean make) throws SQLException {
        if (!Schema.isOurs(database.connection())) {
            return Optional.of(new Refusal("unreadable", Bundle.workshop_foreign()));
        }
        if (version > schema.version()) {
            return Optional.of(new Refusal("newer", Bundle.workshop_newer()));
        }
        return version == 0 && !make
                ? Optional.of(new Refusal("unreadable", Bundle.workshop_emptied()))
                : Optional.empty();
    }

    private Result<Workshop> updated(Path folder, int version, WorkshopLock lock) {
        Optional<Refusal> refusal = new WorkshopUpdate(folder, version, this, codec, clock).carryOut();
        return refusal.isPresent() ? Result.refused(refusal.get()) : open(folder, lock);
    }

    /** The workshop over a database of this or an older version, which is migrated where it is. */
    H2Workshop over(Path folder, Database database, WorkshopLock lock) throws SQLException, IOException {
        int version = Schema.version(database.connection());
        if (version < schema.version()) {
            schema.migrate(database.connection(), version);
            database.sync();
        }
        return new H2Workshop(folder, lock, database, codec, clock, watch, schema);
    }

    private static Refusal unreadable(Exception e) {
        if (e instanceof DamagedJournalException) {
            return new Refusal("unreadable", Bundle.journal_damaged(Journal.FILE));
        }
        Refusal disk = DiskRefusals.of(e, false);
        if (!disk.code().equals("disk")) {
            return disk;
        }
        LOG.log(Level.WARNING, "opening a workshop", e);
        return new Refusal("unreadable", Bundle.workshop_unreadable());
    }
}
