package org.glintery.records;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.glintery.api.GlinteryException;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.disk.FolderNames;
import org.glintery.api.workshop.Workshop.CopyReport;
import org.openide.util.NbBundle.Messages;

/**
 * Brings the database of an older program up to date. A copy is migrated and checked, and a backup with the older database
 * and everything as JSON is written; only then does the copy take the database's place, in one step of the file system. So
 * whatever happens before leaves the workshop to the older program as it was. The database is closed, the folder locked.
 */
@Messages({
    "# {0} - what went wrong",
    "update-failed=This workshop comes from an older Glintery and could not be brought up to date ({0}). Nothing was "
            + "changed; the older Glintery can still open it."
})
final class WorkshopUpdate {
    private static final Logger LOG = Logger.getLogger(WorkshopUpdate.class.getName());
    private static final String TRIAL = "update-in-the-making";

    private final Path folder;
    private final Path trial;
    private final int version;
    private final WorkshopOpening opening;
    private final JacksonCodec codec;
    private final Clock clock;

    /** @param version of the database as it is */
    WorkshopUpdate(Path folder, int version, WorkshopOpening opening, JacksonCodec codec, Clock clock) {
        this.folder = folder;
        this.trial = folder.resolve(TRIAL);
        this.version = version;
        this.opening = opening;
        this.codec = codec;
        this.clock = clock;
    }

    /** Why not, with nothing changed; empty when the database is up to date. */
    Optional<Refusal> carryOut() {
        Leftovers.remove(trial);
        try {
            layOutTrial();
            Optional<Refusal> refusal = tryOut();
            if (refusal.isEmpty()) {
                Files.move(
                        trial.resolve(Database.FILE),
                        folder.resolve(Database.FILE),
                        StandardCopyOption.ATOMIC_MOVE,
                        StandardCopyOption.REPLACE_EXISTING);
                FolderNames.sync(folder);
            }
            return refusal;
        } catch (IOException | SQLException | GlinteryException e) {
            LOG.log(Level.WARNING, "updating a workshop", e);
            Refusal disk = DiskRefusals.of(e, false);
            return Optional.of(disk.code().equals("disk") ? failed(e.getMessage()) : disk);
        } finally {
            Leftovers.remove(trial);
        }
    }

    private static Refusal failed(String why) {
        return new Refusal("update-failed", Bundle.update_failed(why));
    }

    private void layOutTrial() throws IOException {
        Files.createDirectories(trial);
        for (String name : List.of(Database.FILE, Journal.FILE)) {
            if (Files.exists(folder.resolve(name))) {
                Files.copy(folder.resolve(name), trial.resolve(name));
            }
        }
        Path pictures = folder.resolve(BlobFolder.NAME);
        if (Files.exists(pictures)) {
            Files.createDirectories(trial.resolve(BlobFolder.NAME));
            try (Stream<Path> all = Files.list(pictures)) {
                for (Path picture : all.toList()) {
                    link(picture, trial.resolve(BlobFolder.NAME).resolve(picture.getFileName()));
                }
            }
        }
    }

    /** Pictures are never written to: a second name is as good as a copy where the disk has such. */
    private static void link(Path picture, Path name) throws IOException {
        try {
            Files.createLink(name, picture);
        } catch (UnsupportedOperationException | FileSystemException e) {
            Files.copy(picture, name, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private Optional<Refusal> tryOut() throws IOException, SQLException {
        WorkshopLock lock =
                WorkshopLock.take(trial, clock.instant()).orElseThrow(() -> new IOException("its copy is in use"));
        Optional<Refusal> refusal;
        try (H2Workshop workshop = over(lock)) {
            // a picture that was gone before is no reason to stay behind
            var pictures = new PicturesOnDisk(workshop.state(), codec, workshop::blob);
            workshop.state().blobs().values().forEach(pictures::whole);
            List<String> problems = workshop.checkBut(pictures.lost()).problems();
            refusal = problems.isEmpty() ? backedUp(workshop) : Optional.of(failed(problems.get(0)));
        }
        boolean whole = Files.size(trial.resolve(Journal.FILE)) == 0;
        return refusal.isPresent() || whole ? refusal : Optional.of(failed("its copy could not be closed"));
    }

    private H2Workshop over(WorkshopLock lock) throws IOException, SQLException {
        Database database = null;
        try {
            database = Database.open(trial);
            return opening.over(trial, database, lock);
        } catch (IOException | SQLException | GlinteryException e) {
            if (database != null) {
                database.close();
            }
            lock.close();
            throw e;
        }
    }

    private Optional<Refusal> backedUp(H2Workshop workshop) {
        String stamp = DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss").format(LocalDateTime.now(clock));
        Result<CopyReport> written = new BackupZip(workshop, codec, clock)
                .writeWith(
                        folder.resolve(Database.FILE),
                        version,
                        folder.resolve("before-update-" + version + "-" + stamp + ".zip"));
        return written instanceof Result.Refused<CopyReport> refused
                ? Optional.of(refused.refusal())
                : Optional.empty();
    }
}
