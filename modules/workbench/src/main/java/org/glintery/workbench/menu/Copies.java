package org.glintery.workbench.menu;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.exchange.TableFiles;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshop.CopyReport;
import org.glintery.workbench.copies.CopyNews;
import org.glintery.workbench.desk.LongWork;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** Copies of the workshop made from the window, in the background. Event thread. */
public final class Copies {
    private static final String ZIP = ".zip";
    private static final DateTimeFormatter IN_NAMES = DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmm");

    private Copies() {}

    /** Asks where to. */
    @Messages({
        "Copies.backUpTitle=Back up the workshop",
        "Copies.backingUp=Backing up",
        "# {0} - file",
        "# {1} - documents",
        "Copies.backedUp=Backed up to {0}: {1} documents. It can be read without Glintery."
    })
    public static void backUp(Desk desk) {
        Workshop workshop = desk.workshop();
        String name = workshop.folder().getFileName() + "-"
                + LocalDateTime.now(desk.clock()).format(IN_NAMES) + ".zip";
        Files.save(Bundle.Copies_backUpTitle(), name)
                .ifPresent(file -> copy(desk, Bundle.Copies_backingUp(), () -> workshop.backup(file), report -> {
                    desk.say(Bundle.Copies_backedUp(file.getFileName(), report.documents()));
                    CopyNews.tell();
                }));
    }

    @Messages({
        "Copies.exportTitle=Export the workshop",
        "Copies.exporting=Exporting",
        "# {0} - file",
        "# {1} - documents",
        "Copies.exported=Written to {0}: {1} documents."
    })
    static void export(Desk desk) {
        Workshop workshop = desk.workshop();
        Files.save(Bundle.Copies_exportTitle(), workshop.folder().getFileName() + ".json")
                .ifPresent(file -> copy(
                        desk,
                        Bundle.Copies_exporting(),
                        () -> workshop.exportJson(file),
                        report -> desk.say(Bundle.Copies_exported(file.getFileName(), report.documents()))));
    }

    @Messages("Copies.tablesTitle=Export the workshop as tables, in one zip file")
    static void exportTables(Desk desk) {
        Workshop workshop = desk.workshop();
        workshop.find(TableFiles.class)
                .ifPresent(tables -> Files.save(
                                Bundle.Copies_tablesTitle(), workshop.folder().getFileName() + "-tables" + ZIP)
                        .ifPresent(file -> copy(
                                desk,
                                Bundle.Copies_exporting(),
                                () -> tables.exportTables(file),
                                report -> desk.say(Bundle.Copies_exported(file.getFileName(), report.documents())))));
    }

    @Messages({
        "Copies.importTitle=Import an export",
        "Copies.importing=Importing",
        "# {0} - file",
        "# {1} - documents",
        "Copies.imported=Taken in from {0}: {1} documents."
    })
    static void takeIn(Desk desk) {
        Optional<Path> chosen = Files.open(Bundle.Copies_importTitle());
        chosen.ifPresent(file -> copy(
                desk,
                Bundle.Copies_importing(),
                () -> imported(desk.workshop(), file),
                report -> desk.say(Bundle.Copies_imported(file.getFileName(), report.documents()))));
    }

    /** Tables come in a zip, all else is the one file of an export. */
    private static Result<CopyReport> imported(Workshop workshop, Path file) {
        boolean zipped = file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(ZIP);
        Optional<TableFiles> tables = zipped ? workshop.find(TableFiles.class) : Optional.empty();
        return tables.isPresent() ? tables.get().importTables(file) : workshop.importJson(file);
    }

    @Messages({
        "Copies.checking=Checking the workshop",
        "# {0} - documents",
        "# {1} - movements",
        "# {2} - pictures",
        "Copies.clean=All is well: {0} documents, {1} movements and {2} pictures agree.",
        "# {0} - sentences",
        "Copies.problems=Something does not agree. Nothing was changed. Restore the last backup into a new folder and compare.\n{0}"
    })
    static void check(Desk desk) {
        LongWork work = LongWork.begin(Bundle.Copies_checking(), false);
        desk.compute(view -> told(work, () -> desk.workshop().check()), report -> {
            if (report.problems().isEmpty()) {
                desk.say(Bundle.Copies_clean(report.documents(), report.movements(), report.blobs()));
            } else {
                String all = String.join("\n", report.problems());
                refuse(desk, new Refusal("check", Bundle.Copies_problems(all)));
            }
        });
    }

    private static void copy(Desk desk, String words, Supplier<Result<CopyReport>> copying, Consumer<CopyReport> done) {
        LongWork work = LongWork.begin(words, false);
        desk.compute(view -> told(work, copying), result -> {
            if (result instanceof Result.Ok<CopyReport> ok) {
                done.accept(ok.value());
            } else if (result instanceof Result.Refused<CopyReport> no) {
                refuse(desk, no.refusal());
            }
        });
    }

    private static <T> T told(LongWork work, Supplier<T> doing) {
        try (work) {
            return doing.get();
        }
    }

    /** Told the way the desk tells changes that were refused. */
    private static void refuse(Desk desk, Refusal refusal) {
        desk.change(view -> Result.refused(refusal));
    }
}
