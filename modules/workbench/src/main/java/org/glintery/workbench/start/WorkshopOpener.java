package org.glintery.workbench.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.glintery.api.Result;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.DemoWorkshop;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;
import org.glintery.workbench.desk.LongWork;
import org.openide.util.NbBundle.Messages;

/** Opens or makes a workshop. Disk; not on the event thread. */
public final class WorkshopOpener {
    private static final long DEMO_SEED = 1;
    private final Workshops workshops;
    private final Optional<DemoWorkshop> demo;

    public WorkshopOpener(Workshops workshops, Optional<DemoWorkshop> demo) {
        this.workshops = workshops;
        this.demo = demo;
    }

    /**
     * Opens what is in the folder; makes a workshop when the folder is new or empty.
     *
     * @param settings put into a new workshop
     * @param withDemo whether a new workshop is filled with the demo
     */
    public Result<Workshop> openOrMake(Path folder, Settings settings, boolean withDemo) {
        if (workshops.isWorkshop(folder) || !isNewOrEmpty(folder)) {
            return workshops.open(folder);
        }
        return workshops.create(folder).then(made -> filled(made, settings, withDemo));
    }

    public Result<Workshop> open(Path folder) {
        return workshops.open(folder);
    }

    private Result<Workshop> filled(Workshop made, Settings settings, boolean withDemo) {
        return withDemo && demo.isPresent() ? withDemo(made, settings, demo.get()) : empty(made, settings, withDemo);
    }

    /** Tells in the foot of the window how far it is; a demo that was stopped leaves an empty workshop. */
    @Messages({
        "WorkshopOpener.painting=Painting the demo",
        "WorkshopOpener.left=The demo was stopped. The workshop is empty."
    })
    private Result<Workshop> withDemo(Workshop made, Settings settings, DemoWorkshop filling) {
        try (LongWork work = LongWork.begin(Bundle.WorkshopOpener_painting(), true)) {
            Result<Applied> filled = filling.fill(made, DEMO_SEED, share -> {
                work.reach(share);
                return !work.isLeft();
            });
            if (filled instanceof Result.Refused<Applied> && work.isLeft()) {
                return empty(made, settings, false)
                        .then(open -> Result.ok(open, List.of(Bundle.WorkshopOpener_left())));
            }
            return closedIfRefused(made, filled);
        }
    }

    @Messages("WorkshopOpener.noDemo=The demo is not part of this application. An empty workshop was made instead.")
    private static Result<Workshop> empty(Workshop made, Settings settings, boolean demoWanted) {
        return closedIfRefused(made, made.apply(chosen(settings)))
                .then(open -> Result.ok(open, demoWanted ? List.of(Bundle.WorkshopOpener_noDemo()) : List.of()));
    }

    /** It stays the first in the list of what can be taken back, so it says what was chosen. */
    @Messages({
        "WorkshopOpener.book=Begin the workshop with only the book",
        "WorkshopOpener.drills=Begin the workshop with the drills as well"
    })
    static ChangeSet chosen(Settings settings) {
        boolean book = settings.depth() == Settings.Depth.ONLY_THE_BOOK;
        return ChangeSet.named(book ? Bundle.WorkshopOpener_book() : Bundle.WorkshopOpener_drills())
                .put(Settings.TYPE, Settings.ID, settings)
                .build();
    }

    private static Result<Workshop> closedIfRefused(Workshop made, Result<?> step) {
        if (step instanceof Result.Refused<?> no) {
            made.close();
            return Result.refused(no.refusal());
        }
        return Result.ok(made, ((Result.Ok<?>) step).warnings());
    }

    private static boolean isNewOrEmpty(Path folder) {
        if (!Files.exists(folder)) {
            return true;
        }
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isEmpty();
        } catch (IOException e) {
            return false; // opening it says in words what is wrong
        }
    }
}
