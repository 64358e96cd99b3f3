package org.glintery.api.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.glintery.api.OffTheEventThread;
import org.glintery.api.Preview;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.time.About;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshop.CopyReport;

/**
 * A folder into which an open workshop is copied again and again. Each copy is a backup, named after the workshop and the
 * day. The newest ten and the newest of each month stay; older ones are removed, but only those that this very workshop
 * made and that still have such a name. Disk: not on the event thread. By one thread at a time.
 */
@Preview(since = "1.0")
public final class SecondFolder {
    private static final Logger LOG = Logger.getLogger(SecondFolder.class.getName());
    private final Path folder;
    private final Workshop workshop;
    private final Clock clock;
    private final CopiesMade made;

    public SecondFolder(Path folder, Workshop workshop, Clock clock) {
        this.folder = folder.toAbsolutePath().normalize();
        this.workshop = workshop;
        this.clock = clock;
        this.made = new CopiesMade(workshop.folder());
    }

    /** When it is asked whether a copy is due: a day after the last one, or not before a week. */
    public enum Occasion {
        CLOSING,
        OPENED
    }

    /** The last copy made here. @param file where it was written; it may have been moved since */
    public record Last(Instant at, Path file) {}

    /** @param removed older copies */
    public record Made(CopyReport report, List<Path> removed) {
        public Made {
            removed = List.copyOf(removed);
        }
    }

    public Path folder() {
        return folder;
    }

    /**
     * Why nothing can be copied here: {@code no-folder}, {@code inside-workshop}, or {@code read-only}, which is tried.
     * Empty when it can.
     */
    public Optional<Refusal> objection() {
        OffTheEventThread.check();
        if (!Files.isDirectory(folder)) {
            return refusal("no-folder", "noFolder", folder, lastWords());
        }
        try {
            if (folder.toRealPath().startsWith(workshop.folder().toRealPath())) {
                return refusal("inside-workshop", "inside", folder);
            }
            Files.delete(Files.createTempFile(folder, "glintery", ".part"));
            return Optional.empty();
        } catch (IOException e) {
            LOG.log(Level.INFO, "A folder for copies can't be written to", e);
            return refusal("read-only", "readOnly", folder, lastWords());
        }
    }

    public Optional<Last> last() {
        OffTheEventThread.check();
        return made.in(folder)
                .filter(copies -> !copies.files().isEmpty())
                .map(copies -> new Last(copies.at(), folder.resolve(newest(copies))));
    }

    /** Whether something changed since the last copy here, or there is none, or it is gone from the folder. */
    public boolean isBehind() {
        OffTheEventThread.check();
        Optional<CopiesMade.In> copies = made.in(folder);
        return copies.isEmpty()
                || copies.get().revision() != workshop.view().revision()
                || Files.isDirectory(folder)
                        && last().filter(last -> Files.exists(last.file())).isEmpty();
    }

    /** Whether it is behind and the last copy old enough. */
    public boolean isDue(Occasion occasion) {
        Optional<LocalDate> day = last().map(last -> LocalDate.ofInstant(last.at(), clock.getZone()));
        return CopyRule.isDue(occasion, day, LocalDate.now(clock)) && isBehind();
    }

    /** Copies whether it is due or not, then removes copies there are too many. Refused like {@link #objection()} or a backup. */
    public Result<Made> copy() {
        Optional<Refusal> objection = objection();
        if (objection.isPresent()) {
            return Result.refused(objection.get());
        }
        long revision = workshop.view().revision(); // before the backup: what changes meanwhile counts as not copied
        Path file = folder.resolve(CopyName.first(workshop.folder(), LocalDate.now(clock))
                .freeIn(folder)
                .fileName());
        Result<CopyReport> copied = workshop.backup(file);
        if (copied instanceof Result.Refused<CopyReport> no) {
            return Result.refused(
                    no.refusal().code(), text("failed", folder, no.refusal().text(), lastWords()));
        }
        return copied.then(report -> Result.ok(new Made(report, remembered(revision, file))));
    }

    private List<Path> remembered(long revision, Path file) {
        Instant now = clock.instant();
        CopiesMade.In all = made.in(folder)
                .orElse(new CopiesMade.In(now, revision, List.of()))
                .and(now, revision, file.getFileName().toString());
        made.remember(folder, all);
        List<CopyName> names = all.files().stream()
                .flatMap(name -> CopyName.read(name).stream())
                .filter(name -> Files.isRegularFile(folder.resolve(name.fileName())))
                .toList();
        List<Path> removed = new ArrayList<>();
        CopyRule.tooMany(names).stream()
                .map(name -> folder.resolve(name.fileName()))
                .filter(old -> !old.equals(file))
                .filter(SecondFolder::isRemoved)
                .forEach(removed::add);
        if (!removed.isEmpty()) {
            made.remember(
                    folder,
                    all.without(removed.stream()
                            .map(old -> old.getFileName().toString())
                            .toList()));
        }
        return removed;
    }

    /** One that can't be removed is tried again after the next copy. */
    private static boolean isRemoved(Path old) {
        try {
            Files.delete(old);
            return true;
        } catch (IOException e) {
            LOG.log(Level.INFO, "An old copy could not be removed", e);
            return false;
        }
    }

    private static String newest(CopiesMade.In copies) {
        return copies.files().get(copies.files().size() - 1);
    }

    private String lastWords() {
        return last().map(last -> LocalDate.ofInstant(last.at(), clock.getZone()))
                .map(day -> text("last", About.on(day).words()))
                .orElseGet(() -> text("never"));
    }

    private static Optional<Refusal> refusal(String code, String key, Object... values) {
        return Optional.of(new Refusal(code, text(key, values)));
    }

    private static String text(String key, Object... values) {
        return DiskTexts.text("SecondFolder." + key, values);
    }
}
