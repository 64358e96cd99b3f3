package org.glintery.workbench.start;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.SwingUtilities;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.workshop.DemoWorkshop;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;
import org.glintery.workbench.copies.FolderCopying;
import org.glintery.workbench.desk.CurrentDesk;
import org.glintery.workbench.desk.LongWork;
import org.glintery.workbench.desk.WindowSpeech;
import org.glintery.workbench.desk.WorkshopDesk;
import org.glintery.workbench.found.Found;
import org.glintery.workbench.parts.Asking;
import org.glintery.workbench.piece.PieceWindow;
import org.openide.util.NbBundle.Messages;
import org.openide.util.NbPreferences;

/** Brings a workshop into the window: opened in the background, shown when it is there. Event thread. */
public final class Opening {
    private static final Logger LOG = Logger.getLogger(Opening.class.getName());
    private static final Executor BACKGROUND = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "Opening");
        thread.setDaemon(true);
        return thread;
    });
    private static final Closings CLOSINGS = new Closings(BACKGROUND);
    private final WindowSpeech speech = new WindowSpeech();
    private final LastFolder lastFolder = new LastFolder(NbPreferences.forModule(Opening.class));
    private final Workshops workshops;
    private final Optional<DemoWorkshop> demo;

    public static Opening usual() {
        return new Opening(Found.one(Workshops.class), Found.maybe(DemoWorkshop.class));
    }

    private Opening(Workshops workshops, Optional<DemoWorkshop> demo) {
        this.workshops = workshops;
        this.demo = demo;
    }

    /** What the window begins with. */
    void begin(Optional<Path> named, boolean withDemo, Path home) {
        CompletableFuture.supplyAsync(
                        () -> StartChoice.choose(named, withDemo, lastFolder.get(), home, workshops::isWorkshop),
                        BACKGROUND)
                .thenAcceptAsync(this::follow, SwingUtilities::invokeLater);
    }

    private void follow(StartChoice choice) {
        if (choice instanceof StartChoice.OpenFolder open) {
            bring(open.folder(), Settings.USUAL, open.demo());
        } else if (choice instanceof StartChoice.AskFirst ask) {
            askForNew(ask.suggested());
        }
    }

    /** Asks where a new workshop shall be and makes it. */
    @Messages({"Opening.title=Welcome to Glintery", "Opening.make=Set up the workshop"})
    public void askForNew(Path suggested) {
        FirstStartForm form = new FirstStartForm(suggested, demo.isPresent());
        if (Asking.ask(
                Bundle.Opening_title(),
                form,
                Bundle.Opening_make(),
                () -> form.folder().isPresent())) {
            form.folder().ifPresent(folder -> bring(folder, form.settings(), form.demo()));
        }
    }

    /** Opens a folder, making a workshop there when it is new or empty. */
    @Messages({"# {0} - folder", "Opening.opening=Opening {0} …", "# {0} - folder", "Opening.open={0} is open."})
    public void bring(Path folder, Settings settings, boolean withDemo) {
        WorkshopOpener opener = new WorkshopOpener(workshops, demo);
        bring(folder, () -> opener.openOrMake(folder, settings, withDemo));
    }

    /** Opens a folder that holds a workshop. */
    public void openExisting(Path folder) {
        bring(folder, () -> workshops.open(folder));
    }

    /** Lays a backup out in an empty folder and opens it. */
    @Messages({"# {0} - backup", "Opening.restoring=Restoring {0} \u2026"})
    public void restore(Path backup, Path folder) {
        speech.say(Bundle.Opening_restoring(backup.getFileName()));
        bring(folder, () -> workshops.restore(backup, folder).then(report -> workshops.open(folder)));
    }

    private void bring(Path folder, Supplier<Result<Workshop>> open) {
        if (CurrentDesk.get()
                .desk()
                .filter(d -> d.workshop().folder().equals(folder))
                .isPresent()) {
            return;
        }
        String words = Bundle.Opening_opening(folder.getFileName());
        speech.say(words);
        CompletableFuture.supplyAsync(() -> told(words, open), BACKGROUND)
                .whenCompleteAsync((result, trouble) -> arrived(folder, result, trouble), SwingUtilities::invokeLater);
    }

    private static <T> T told(String words, Supplier<T> doing) {
        try (LongWork work = LongWork.begin(words, false)) {
            return doing.get();
        }
    }

    @Messages(
            "Opening.fault=The workshop could not be opened because of a mistake in Glintery. It was left as it is, and a note was written to the log.")
    private void arrived(Path folder, Result<Workshop> result, Throwable trouble) {
        if (trouble != null) {
            LOG.log(Level.WARNING, "Opening a workshop failed", trouble);
            speech.refuse(new Refusal("fault", Bundle.Opening_fault()));
        } else if (result instanceof Result.Refused<Workshop> no) {
            speech.say("");
            speech.refuse(no.refusal());
        } else if (result instanceof Result.Ok<Workshop> ok) {
            show(ok.value());
            lastFolder.put(folder);
            speech.say(Bundle.Opening_open(folder.getFileName()));
            ok.warnings().forEach(speech::warn);
        }
    }

    private void show(Workshop workshop) {
        var desk = new WorkshopDesk(workshop, Clock.systemDefaultZone(), speech, PieceWindow::show);
        PieceWindow.closeAll();
        FolderCopying copying = FolderCopying.at(desk);
        desk.beforeClosing(copying::beforeClosing);
        CurrentDesk.get().put(Optional.of(desk)).ifPresent(old -> CLOSINGS.begin(old::close));
        WindowTitle.show(Optional.of(workshop.folder()));
        copying.afterOpening();
    }

    /** Waits for workshops that are still being closed. Not on the event thread. */
    static void awaitClosings() {
        CLOSINGS.await();
    }

    /** Closes the workshop that is open. */
    public void closeCurrent() {
        PieceWindow.closeAll();
        CurrentDesk.get().put(Optional.empty()).ifPresent(old -> CLOSINGS.begin(old::close));
        WindowTitle.show(Optional.empty());
        speech.say("");
    }
}
