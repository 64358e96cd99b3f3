package org.glintery.records;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
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
    "workshop-read-only=The workshop in {0} can not be opened, not even to look at it: its folder or a file in it can''t be written to, and an open workshop notes there that it is open. Nothing was changed. Copy the folder to where you may write and open the copy, or ask for the right to write.",
    "# {0} - folder",
    "folder-not-empty=The folder {0} is not empty. Nothing was changed; choose a new or an empty folder.",
    "# {0} - who",
    "in-use=This workshop is open elsewhere: {0}. Close it there first; nothing was changed.",
    "# {0} - problem",
    "restored-damaged=What was restored is not whole: {0} Nothing was kept; try an older backup."
})
public final class H2Workshops implements Workshops {
    private static final Logger LOG = Logger.getLogger(H2Workshops.class.getName());

    private final Clock clock;
    private final JacksonCodec codec = new JacksonCodec();
    private final Schema schema;
    private final WorkshopOpening opening;

    public H2Workshops() {
        this(Clock.systemDefaultZone(), ChangeMaking.StepWatch.NONE);
    }

    H2Workshops(Clock clock, ChangeMaking.StepWatch watch) {
        this(clock, watch, Schema.OURS);
    }

    H2Workshops(Clock clock, ChangeMaking.StepWatch watch, Schema schema) {
        this.clock = clock;
        this.schema = schema;
        this.opening = new WorkshopOpening(codec, clock, watch, schema);
    }

    @Override
    public boolean isWorkshop(Path folder) {
        OffTheEventThread.check();
        return Files.isRegularFile(folder.resolve(Database.FILE));
    }

    @Override
    public Result<Workshop> open(Path folder) {
        OffTheEventThread.check();
        return isWorkshop(folder)
                ? saidForLooking(folder, locked(folder, false))
                : Result.refused("no-workshop", Bundle.no_workshop(folder));
    }

    /** Whoever only wanted to look has not tried to write anything. */
    private static Result<Workshop> saidForLooking(Path folder, Result<Workshop> result) {
        return result instanceof Result.Refused<Workshop> no
                        && no.refusal().code().equals("read-only")
                ? Result.refused("read-only", Bundle.workshop_read_only(folder))
                : result;
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
        Result<Workshop> opened = locked(folder, true);
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
        } catch (IOException e) { // a folder that can't be read holds nothing of ours either
            LOG.log(Level.WARNING, "could not be cleared away: " + folder, e);
        }
    }

    /** @param make a new one, in a folder without any */
    private Result<Workshop> locked(Path folder, boolean make) {
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
            Result<Workshop> result = make ? opening.make(folder, lock.get()) : opening.open(folder, lock.get());
            opened = result instanceof Result.Ok<Workshop>;
            return result;
        } finally {
            if (!opened) {
                lock.get().close();
            }
        }
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
            Set<String> lost = new RestoreFolder(folder, codec, schema).layOut(backup);
            Result<Workshop.CopyReport> report = verify(backup, folder, lost);
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

    /** @param lost pictures that were gone before the backup was made */
    private Result<Workshop.CopyReport> verify(Path backup, Path folder, Set<String> lost) throws IOException {
        Result<Workshop> opened = open(folder);
        if (opened instanceof Result.Refused<Workshop> refused) {
            return Result.refused(refused.refusal());
        }
        try (var workshop = (H2Workshop) opened.orThrow()) {
            Workshop.CheckReport report = workshop.checkBut(lost);
            if (!report.problems().isEmpty()) {
                return Result.refused(
                        "damaged", Bundle.restored_damaged(report.problems().get(0)));
            }
            var pictures = new PicturesOnDisk(workshop.state(), codec, workshop::blob);
            workshop.state().blobs().values().stream()
                    .filter(blob -> lost.contains(blob.hash()))
                    .forEach(pictures::whole);
            long blobs = report.blobs() - pictures.lost().size();
            return Result.ok(
                    new Workshop.CopyReport(folder, report.documents(), report.movements(), blobs, Files.size(backup)),
                    pictures.warnings());
        }
    }
}
