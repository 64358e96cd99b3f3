package org.glintery.testkit;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.glintery.workbench.spi.Desk;

/**
 * A desk for tests of screen parts. Work is done in the background, as on the real one, but the caller waits for it, so that
 * a test sees at once what came of it. Event thread.
 */
public final class FakeDesk implements Desk {
    private static final int DEADLINE_S = 5;

    /** What the screen would have been told. */
    public final List<Refusal> refusals = new ArrayList<>();

    public final List<String> warnings = new ArrayList<>();
    public final List<String> said = new ArrayList<>();
    public final List<UUID> opened = new ArrayList<>();
    private final Workshop workshop;
    private final Clock clock;

    public FakeDesk(Workshop workshop, Clock clock) {
        this.workshop = workshop;
        this.clock = clock;
    }

    @Override
    public Workshop workshop() {
        return workshop;
    }

    @Override
    public Clock clock() {
        return clock;
    }

    @Override
    public void change(Function<View, Result<ChangeSet>> build, Consumer<Applied> then) {
        Result<Applied> result = inBackground(() -> build.apply(workshop.view()).then(workshop::apply));
        if (result instanceof Result.Ok<Applied> ok) {
            warnings.addAll(ok.warnings());
            then.accept(ok.value());
        } else {
            refusals.add(((Result.Refused<Applied>) result).refusal());
        }
    }

    @Override
    public <T> void compute(Function<View, T> work, Consumer<T> show) {
        show.accept(inBackground(() -> work.apply(workshop.view())));
    }

    @Override
    public void openPiece(UUID piece) {
        opened.add(piece);
    }

    @Override
    public void say(String sentence) {
        said.add(sentence);
    }

    private static <T> T inBackground(Supplier<T> work) {
        EventThread.assertOn();
        try {
            return CompletableFuture.supplyAsync(work).get(DEADLINE_S, TimeUnit.SECONDS);
        } catch (InterruptedException | TimeoutException e) {
            throw new AssertionError("no answer within " + DEADLINE_S + " s", e);
        } catch (ExecutionException e) {
            throw new AssertionError("failed in the background", e.getCause());
        }
    }
}
