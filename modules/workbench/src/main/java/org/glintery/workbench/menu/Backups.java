package org.glintery.workbench.menu;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.prefs.Preferences;
import org.glintery.api.Result;
import org.glintery.api.time.About;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.Workshop;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;
import org.openide.util.NbPreferences;

/** Backups made from the window, and when the last one was. */
public final class Backups {
    private static final DateTimeFormatter IN_NAMES = DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmm");

    /** @param day when, in words @param file where */
    public record Last(String day, String file) {}

    private Backups() {}

    /** What is remembered of the last backup of a workshop. Any thread. */
    public static Optional<Last> last(Workshop workshop) {
        Preferences node = node(workshop);
        String when = node.get("when", "");
        if (when.isEmpty()) {
            return Optional.empty();
        }
        LocalDateTime at = LocalDateTime.parse(when);
        String day = About.on(at.toLocalDate()).words() + ", " + at.format(DateTimeFormatter.ofPattern("HH:mm"));
        return Optional.of(new Last(day, node.get("file", "")));
    }

    /** Asks where to and writes a backup in the background. Event thread. @param done called when it is written */
    @Messages({
        "Backups.title=Back up the workshop",
        "# {0} - file",
        "# {1} - documents",
        "Backups.done=Backed up to {0}: {1} documents. It can be read without Glintery."
    })
    public static void backUp(Desk desk, Runnable done) {
        Workshop workshop = desk.workshop();
        LocalDateTime now = LocalDateTime.now(desk.clock());
        String name = workshop.folder().getFileName() + "-" + now.format(IN_NAMES) + ".zip";
        Files.save(Bundle.Backups_title(), name)
                .ifPresent(file -> desk.compute(view -> workshop.backup(file), result -> {
                    if (result instanceof Result.Ok<Workshop.CopyReport> ok) {
                        remember(workshop, file, now);
                        desk.say(Bundle.Backups_done(
                                file.getFileName(), ok.value().documents()));
                        done.run();
                    } else if (result instanceof Result.Refused<Workshop.CopyReport> no) {
                        Telling.refused(desk, no.refusal());
                    }
                }));
    }

    private static void remember(Workshop workshop, Path file, LocalDateTime when) {
        Preferences node = node(workshop);
        node.put("when", when.withNano(0).toString());
        node.put("file", file.toString());
    }

    private static Preferences node(Workshop workshop) {
        byte[] folder = workshop.folder().toAbsolutePath().toString().getBytes(java.nio.charset.StandardCharsets.UTF_8);
        return NbPreferences.forModule(Backups.class)
                .node("backups/" + Blob.hash(folder).substring(0, 16));
    }
}
