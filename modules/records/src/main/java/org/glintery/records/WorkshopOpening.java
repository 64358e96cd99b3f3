package org.glintery.records;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Optional;
import org.glintery.api.GlinteryException;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.workshop.Workshop;
import org.openide.util.NbBundle.Messages;

/** Opens the database of a folder whose lock is held, and brings an older one up to date first. Not on the event thread. */
@Messages({
    "workshop-newer=This workshop was written by a newer Glintery. Nothing was changed; update Glintery to open it.",
    "# {0} - what went wrong",
    "workshop-unreadable=This workshop can''t be read ({0}). Nothing was changed; a backup can be restored into a new folder.",
    "# {0} - the file",
    "journal-damaged=The file {0} of this workshop is damaged, and opening it would lose the newest changes. Nothing was changed; keep a copy of the folder, and restore a backup into a new one.",
    "folder-name=A workshop can not be in a folder with a semicolon in its name. Nothing was changed; rename the folder or choose another.",
    "workshop-foreign=This database holds more than a workshop does, and was not opened. Nothing was changed; a backup can be restored into a new folder."
})
final class WorkshopOpening {
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

    Result<Workshop> open(Path folder, WorkshopLock lock) {
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
            if (!Schema.isOurs(database.connection())) {
                database.close();
                return Result.refused("unreadable", Bundle.workshop_foreign());
            }
            int version = Schema.version(database.connection());
            if (version > schema.version()) {
                database.close();
                return Result.refused("newer", Bundle.workshop_newer());
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

    private Result<Workshop> updated(Path folder, int version, WorkshopLock lock) {
        Optional<Refusal> refusal = new WorkshopUpdate(folder, version, this, codec, clock).carryOut();
        return refusal.isPresent() ? Result.refused(refusal.get()) : open(folder, lock);
    }

    /** The workshop over a database of this or an older version, which is migrated where it is. */
    H2Workshop over(Path folder, Database database, WorkshopLock lock) throws SQLException, IOException {
        int version = Schema.version(database.connection());
        if (version < schema.version()) {
            schema.migrate(database.connection(), version);
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
        String words = String.valueOf(e.getMessage());
        int end = words.indexOf('[');
        return new Refusal(
                "unreadable",
                Bundle.workshop_unreadable(end > 0 ? words.substring(0, end).strip() : words));
    }
}
