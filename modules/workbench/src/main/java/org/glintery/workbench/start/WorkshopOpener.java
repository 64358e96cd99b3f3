package org.glintery.workbench.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.glintery.api.Result;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.DemoWorkshop;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;
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

    @Messages("WorkshopOpener.noDemo=The demo is not part of this application. An empty workshop was made instead.")
    private Result<Workshop> filled(Workshop made, Settings settings, boolean withDemo) {
        if (withDemo && demo.isPresent()) {
            return closedIfRefused(made, demo.get().fill(made, DEMO_SEED));
        }
        Result<?> chosen = made.apply(chosen(made, settings));
        Result<Workshop> result = closedIfRefused(made, chosen);
        return withDemo && result instanceof Result.Ok<Workshop> ok
                ? Result.ok(ok.value(), java.util.List.of(Bundle.WorkshopOpener_noDemo()))
                : result;
    }

    @Messages("WorkshopOpener.settings=Choose how much of the workshop is kept here")
    private static ChangeSet chosen(Workshop workshop, Settings settings) {
        return ChangeSet.named(Bundle.WorkshopOpener_settings())
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
