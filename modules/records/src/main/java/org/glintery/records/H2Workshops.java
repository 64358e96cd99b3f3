package org.glintery.records;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.stream.Stream;
import org.glintery.api.GlinteryException;
import org.glintery.api.OffTheEventThread;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** Opens, makes and restores workshops kept in H2. Any thread but the event thread. */
@ServiceProvider(service = Workshops.class)
@Messages({
    "# {0} - folder",
    "no-workshop=There is no workshop in {0}. Make one there, or choose the folder that holds yours.",
    "# {0} - folder",
    "folder-not-empty=The folder {0} is not empty. Nothing was changed; choose a new or an empty folder.",
    "# {0} - who",
    "in-use=This workshop is open elsewhere: {0}. Close it there first; nothing was changed.",
    "workshop-newer=This workshop was written by a newer Glintery. Nothing was changed; update Glintery to open it.",
    "# {0} - what went wrong",
    "workshop-unreadable=This workshop can''t be read ({0}). Nothing was changed; a backup can be restored into a new folder.",
    "# {0} - the file",
    "journal-damaged=The file {0} of this workshop is damaged, and opening it would lose the newest changes. Nothing was changed; keep a copy of the folder, and restore a backup into a new one.",
    "folder-name=A workshop can not be in a folder with a semicolon in its name. Nothing was changed; rename the folder or choose another.",
    "workshop-foreign=This database holds more than a workshop does, and was not opened. Nothing was changed; a backup can be restored into a new folder.",
    "# {0} - problem",
    "restored-damaged=What was restored is not whole: {0} Nothing was kept; try an older backup."
})
public final class H2Workshops implements Workshops {
    private final Clock clock;
    private final ChangeMaking.StepWatch watch;
    private final JacksonCodec codec = new JacksonCodec();

    public H2Workshops() {
        this(Clock.systemDefaultZone(), ChangeMaking.StepWatch.NONE);
    }

    H2Workshops(Clock clock, ChangeMaking.StepWatch watch) {
        this.clock = clock;
        this.watch = watch;
    }

    @Override
    public boolean isWorkshop(Path folder) {
        OffTheEventThread.check();
        return Files.isRegularFile(folder.resolve(Database.FILE));
    }

    @Override
    public Result<Workshop> open(Path folder) {
        OffTheEventThread.check();
        return isWorkshop(folder) ? locked(folder) : Result.refused("no-workshop", Bundle.no_workshop(folder));
    }

    @Override
    public Result<Workshop> create(Path folder) {
        OffTheEventThread.check();
        boolean made = Files.notExists(folder);
        try {
            Optional<Refusal> refusal = prepare(folder);
            if (refusal.isPresent()) {
                return Result.refused(refusal.get());
            }
        } catch (IOException e) {
            return Result.refused(DiskRefusals.of(e, false));
        }
        Result<Workshop> opened = locked(folder);
        if (opened instanceof Result.Refused<Workshop> refused
                && !refused.refusal().code().equals("in-use")) {
            clear(folder, made);
        }
        return opened;
    }

    /** Makes the folder if need be; refused when something is in it. */
    private static Optional<Refusal> prepare(Path folder) throws IOException {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            return Optional.of(new Refusal("not-empty", Bundle.folder_not_empty(folder)));
        }
        Files.createDirectories(folder);
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isPresent()
                    ? Optional.of(new Refusal("not-empty", Bundle.folder_not_empty(folder)))
                    : Optional.empty();
        }
    }

    private static void clear(Path folder, boolean made) {
        if (made) {
            Leftovers.remove(folder);
            return;
        }
        try (Stream<Path> inside = Files.walk(folder, 1, new FileVisitOption[0])) {
            inside.filter(path -> !path.equals(folder)).toList().forEach(Leftovers::remove);
        } catch (IOException e) {
            throw new GlinteryException("a folder could not be cleared", e);
        }
    }

    private Result<Workshop> locked(Path folder) {
        Optional<WorkshopLock> lock;
        try {
            lock = WorkshopLock.take(folder, clock.instant());
        } catch (IOException e) {
            return Result.refused(DiskRefusals.of(e, false));
        }
        if (lock.isEmpty()) {
            return Result.refused("in-use", Bundle.in_use(WorkshopLock.holder(folder)));
        }
        boolean opened = false;
        try {
            Result<Workshop> result = open(folder, lock.get());
            opened = result instanceof Result.Ok<Workshop>;
            return result;
        } finally {
            if (!opened) {
                lock.get().close();
            }
        }
    }

    private Result<Workshop> open(Path folder, WorkshopLock lock) {
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
            if (version > Schema.VERSION) {
                database.close();
                return Result.refused("newer", Bundle.workshop_newer());
            }
            if (version < Schema.VERSION) {
                if (version > 0) {
                    database.copyTo(folder.resolve("before-update-" + version + "-" + stamp() + ".zip"));
                }
                Schema.migrate(database.connection(), version);
            }
            return Result.ok(
                    new H2Workshop(folder, lock, database, codec, clock, watch), RemoteFolders.warnings(folder));
        } catch (SQLException | IOException | GlinteryException | NumberFormatException e) {
            database.close();
            return Result.refused(unreadable(e));
        }
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

    private String stamp() {
        return DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss").format(LocalDateTime.now(clock));
    }

    @Override
    public Result<Workshop.CopyReport> restore(Path backup, Path folder) {
        OffTheEventThread.check();
        boolean made = Files.notExists(folder);
        boolean kept = false;
        try {
            Optional<Refusal> refusal = prepare(folder);
            if (refusal.isPresent()) {
                kept = true;
                return Result.refused(refusal.get());
            }
            new RestoreFolder(folder, codec).layOut(backup);
            Result<Workshop.CopyReport> report = verify(backup, folder);
            kept = report instanceof Result.Ok<Workshop.CopyReport>;
            return report;
        } catch (RestoreFolder.NotRestored e) {
            return Result.refused(e.refusal());
        } catch (java.nio.file.NoSuchFileException e) {
            return Result.refused("not-a-backup", Bundle.restore_not_a_backup());
        } catch (IOException e) {
            return Result.refused(DiskRefusals.of(e, false));
        } finally {
            if (!kept) {
                clear(folder, made);
            }
        }
    }

    private Result<Workshop.CopyReport> verify(Path backup, Path folder) throws IOException {
        Result<Workshop> opened = open(folder);
        if (opened instanceof Result.Refused<Workshop> refused) {
            return Result.refused(refused.refusal());
        }
        try (Workshop workshop = opened.orThrow()) {
            Workshop.CheckReport report = workshop.check();
            if (!report.problems().isEmpty()) {
                return Result.refused(
                        "damaged", Bundle.restored_damaged(report.problems().get(0)));
            }
            return Result.ok(new Workshop.CopyReport(
                    folder, report.documents(), report.movements(), report.blobs(), Files.size(backup)));
        }
    }
}
