package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.glintery.api.Json;
import org.glintery.api.Result;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.Workshop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The writer runs nobody else's code, and whoever waits for it can be interrupted without harm. */
class CallersThreadTest {
    private static final UUID ID = new UUID(3, 3);
    private static final int DEADLINE_S = 30;
    private static final BlockingQueue<Thread> RAN_ON = new LinkedBlockingQueue<>();

    /** Tells which thread asks for its text. */
    record Watched(String text) {
        @Override
        public String text() {
            RAN_ON.add(Thread.currentThread());
            return text;
        }
    }

    private static final DocumentType<Watched> FIRST =
            new DocumentType<>("test", "watched", 1, Watched.class, List.of());
    private static final DocumentType<Watched> SECOND =
            new DocumentType<>("test", "watched", 2, Watched.class, List.of(CallersThreadTest::raised));

    private static Json.Obj raised(Json.Obj body) {
        RAN_ON.add(Thread.currentThread());
        return body;
    }

    @TempDir
    Path temp;

    private final AtomicReference<Runnable> beforeStep = new AtomicReference<>(() -> {});
    private final H2Workshops workshops =
            new H2Workshops(Clock.systemUTC(), place -> beforeStep.get().run());
    private Workshop workshop;

    @BeforeEach
    void make() {
        RAN_ON.clear();
        workshop = workshops.create(temp.resolve("w")).orThrow();
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    private static ChangeSet put(DocumentType<Watched> type, String text) {
        return ChangeSet.named("Put").put(type, ID, new Watched(text)).build();
    }

    @Test
    void runsTheRecordsOfOthersOnTheCallersThread() {
        workshop.apply(put(FIRST, "new")).orThrow();
        workshop.apply(put(FIRST, "over an old one")).orThrow();
        workshop.apply(put(SECOND, "over one to be raised")).orThrow();
        workshop.submit(put(SECOND, "handed over")).toCompletableFuture().join().orThrow();
        workshop.undo().orThrow();
        workshop.redo().orThrow();
        assertThat(RAN_ON).hasSizeGreaterThanOrEqualTo(5).containsOnly(Thread.currentThread());
        assertThat(workshop.view().find(SECOND, ID).orElseThrow().value()).isEqualTo(new Watched("handed over"));
    }

    @Test
    void livesOn_whenACallerIsInterruptedInTheMiddleOfItsChange() throws Exception {
        var begun = new CountDownLatch(1);
        var interrupted = new CountDownLatch(1);
        beforeStep.set(() -> {
            begun.countDown();
            await(interrupted);
        });
        var stillInterrupted = new CompletableFuture<Boolean>();
        var result = new CompletableFuture<Result<Applied>>();
        var caller = new Thread(() -> {
            result.complete(workshop.apply(put(FIRST, "interrupted")));
            stillInterrupted.complete(Thread.currentThread().isInterrupted());
        });
        caller.start();
        await(begun);
        caller.interrupt();
        interrupted.countDown();
        assertThat(result.get(DEADLINE_S, TimeUnit.SECONDS)).isInstanceOf(Result.Ok.class);
        assertThat(stillInterrupted.get(DEADLINE_S, TimeUnit.SECONDS))
                .as("the caller is told of it afterwards")
                .isTrue();
        beforeStep.set(() -> {});
        workshop.apply(put(FIRST, "later")).orThrow();
        assertThat(workshop.check().problems()).isEmpty();
        workshop.close();
        workshop = workshops.open(temp.resolve("w")).orThrow();
        assertThat(workshop.view().find(FIRST, ID).orElseThrow().value()).isEqualTo(new Watched("later"));
        assertThat(workshop.history(10)).hasSize(2);
    }

    @Test
    void makesTheChange_whenItsCallerWasInterruptedBefore() {
        Thread.currentThread().interrupt();
        Result<Applied> result = workshop.apply(put(FIRST, "interrupted before"));
        assertThat(Thread.interrupted()).isTrue();
        result.orThrow();
        assertThat(workshop.view().revision()).isEqualTo(1);
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(DEADLINE_S, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new AssertionError("the wrong thread was interrupted: " + Thread.currentThread(), e);
        }
    }
}
