package org.glintery.workbench.copies;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.disk.SecondFolder;
import org.glintery.api.disk.SecondFolder.Last;
import org.glintery.api.disk.SecondFolder.Made;
import org.glintery.api.disk.SecondFolder.Occasion;
import org.glintery.workbench.desk.LongWork;
import org.glintery.workbench.desk.WorkshopDesk;
import org.openide.util.NbBundle.Messages;
import org.openide.util.NbPreferences;
import org.openide.windows.WindowManager;

/** Copies the workshop of a desk into the folder that was chosen for it, if one was. */
public final class FolderCopying {
    private static final String FAILED = "not-copied";
    private final WorkshopDesk desk;
    private final ChosenFolder chosen;
    private final BooleanSupplier windowShows;

    /** @param windowShows whether there is a window to speak in; asked on the event thread */
    FolderCopying(WorkshopDesk desk, ChosenFolder chosen, BooleanSupplier windowShows) {
        this.desk = desk;
        this.chosen = chosen;
        this.windowShows = windowShows;
    }

    public static FolderCopying at(WorkshopDesk desk) {
        return new FolderCopying(
                desk,
                new ChosenFolder(
                        NbPreferences.forModule(FolderCopying.class),
                        desk.workshop().folder()),
                () -> WindowManager.getDefault().getMainWindow().isShowing());
    }

    /**
     * How it stands.
     *
     * @param lastCopied into this folder
     * @param trouble what went wrong since, as a sentence
     */
    public record Standing(Path folder, Optional<Instant> lastCopied, Optional<String> trouble) {}

    /** Empty when no folder was chosen. Disk. */
    public Optional<Standing> standing() {
        return second().map(
                        second -> new Standing(second.folder(), second.last().map(Last::at), chosen.trouble()));
    }

    public boolean isChosen() {
        return chosen.folder().isPresent();
    }

    /**
     * Copies in the background what is due, and tells what went wrong the last time, if nobody heard. Event thread.
     *
     * @return completes when it was told what came of it, on the event thread
     */
    public CompletableFuture<Void> afterOpening() {
        return isChosen()
                ? inBackground(() -> copyIfDue(Occasion.OPENED), wasDue -> tellTrouble())
                : CompletableFuture.completedFuture(null);
    }

    /** Copies what is due, before the workshop is closed. Disk. */
    public void beforeClosing() {
        copyIfDue(Occasion.CLOSING);
        SwingUtilities.invokeLater(this::tellTrouble);
    }

    /**
     * Copies in the background into a folder, and from now on by itself if nothing speaks against it. Event thread.
     *
     * @return completes when it was told what came of it, on the event thread
     */
    @Messages({
        "# {0} - folder",
        "FolderCopying.chosen=Copied into {0}. From now on that is done by itself when something changed."
    })
    public CompletableFuture<Void> choose(Path folder) {
        SecondFolder second = second(folder);
        return inBackground(
                () -> {
                    Optional<Refusal> objection = second.objection();
                    if (objection.isEmpty()) {
                        chosen.choose(folder);
                        copy(second);
                    }
                    return objection;
                },
                objection -> objection.ifPresentOrElse(desk::refuse, () -> tell(Bundle.FolderCopying_chosen(folder))));
    }

    /**
     * Copies in the background, due or not. Event thread.
     *
     * @return completes when it was told what came of it, on the event thread
     */
    @Messages({"# {0} - folder", "FolderCopying.copied=Copied into {0}."})
    public CompletableFuture<Void> copyNow() {
        return second().map(second -> inBackground(
                        () -> {
                            chosen.wentWell(); // whoever asks for it hears of the same trouble once more
                            return copy(second);
                        },
                        copied -> tell(Bundle.FolderCopying_copied(second.folder()))))
                .orElseGet(() -> CompletableFuture.completedFuture(null));
    }

    /** Copies that are there stay. Event thread. */
    @Messages({"# {0} - folder", "FolderCopying.stopped=Nothing is copied into {0} any more. The copies there stay."})
    public void stop() {
        chosen.folder().ifPresent(folder -> {
            chosen.forget();
            CopyNews.tell();
            desk.say(Bundle.FolderCopying_stopped(folder));
        });
    }

    private <T> CompletableFuture<Void> inBackground(Supplier<T> copying, Consumer<T> then) {
        CompletableFuture<Void> told = new CompletableFuture<>();
        desk.compute(view -> desk.whileOpen(copying), done -> {
            done.ifPresent(then);
            told.complete(null);
        });
        return told;
    }

    private boolean copyIfDue(Occasion occasion) {
        return second().filter(second -> second.isDue(occasion)).map(this::copy).isPresent();
    }

    /** @return whether it was copied */
    @Messages({"# {0} - folder", "FolderCopying.copying=Copying into {0}"})
    private boolean copy(SecondFolder second) {
        Result<Made> made;
        try (LongWork work = LongWork.begin(Bundle.FolderCopying_copying(second.folder()), false)) {
            made = second.copy();
        }
        if (made instanceof Result.Refused<Made> no) {
            chosen.wentWrong(no.refusal().text());
        } else {
            chosen.wentWell();
        }
        CopyNews.tell();
        return made instanceof Result.Ok<Made>;
    }

    private void tell(String allWell) {
        if (chosen.trouble().isPresent()) {
            tellTrouble();
        } else {
            desk.say(allWell);
        }
    }

    private void tellTrouble() {
        chosen.untold().filter(sentence -> windowShows.getAsBoolean()).ifPresent(sentence -> {
            desk.refuse(new Refusal(FAILED, sentence));
            chosen.wasTold();
        });
    }

    private Optional<SecondFolder> second() {
        return chosen.folder().map(this::second);
    }

    private SecondFolder second(Path folder) {
        return new SecondFolder(folder, desk.workshop(), desk.clock());
    }
}
