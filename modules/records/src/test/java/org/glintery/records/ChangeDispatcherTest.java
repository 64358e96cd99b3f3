package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.glintery.api.stash.Kit;
import org.glintery.api.workshop.Changed;
import org.glintery.api.workshop.DocRef;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** News of commits reach everyone, whatever one of them does with them. */
class ChangeDispatcherTest {
    private static final int DEADLINE_S = 30;

    private final Logger log = Logger.getLogger(ChangeDispatcher.class.getName());
    private final BlockingQueue<String> logged = new LinkedBlockingQueue<>();
    private final Handler handler = new Handler() {
        @Override
        public void publish(LogRecord line) {
            logged.add(line.getMessage());
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    };
    private final ChangeDispatcher patient = new ChangeDispatcher();
    private final ChangeDispatcher strict = new ChangeDispatcher(Duration.ofMillis(50));

    @BeforeEach
    void listenToTheLog() {
        log.setUseParentHandlers(false);
        log.addHandler(handler);
    }

    @AfterEach
    void close() {
        patient.close();
        strict.close();
        log.removeHandler(handler);
        log.setUseParentHandlers(true);
    }

    private static Changed news(long revision) {
        return new Changed(revision, Set.of(document(revision)), revision % 2 == 0);
    }

    private static DocRef document(long revision) {
        return Kit.TYPE.ref(new UUID(0, revision));
    }

    private static <T> T next(BlockingQueue<T> queue) throws InterruptedException {
        T next = queue.poll(DEADLINE_S, TimeUnit.SECONDS);
        assertThat(next).as("came in time").isNotNull();
        return next;
    }

    @Test
    void tellsTheOthers_whateverAListenerThrows() throws InterruptedException {
        var heard = new LinkedBlockingQueue<Long>();
        List<Throwable> thrown = new ArrayList<>(List.of(
                new IllegalStateException("wrong"),
                new NoClassDefFoundError("org/elsewhere/Gone"),
                new StackOverflowError(),
                new AssertionError("not so")));
        int all = thrown.size();
        patient.listen(news -> ChangeDispatcherTest.<RuntimeException>raise(thrown.remove(0)));
        patient.listen(news -> heard.add(news.revision()));
        for (long revision = 1; revision <= all; revision++) {
            patient.committed(news(revision));
            assertThat(next(heard)).isEqualTo(revision);
        }
        assertThat(thrown).as("all were thrown").isEmpty();
        assertThat(logged).as("named once").singleElement().asString().startsWith("a listener failed: ");
    }

    @SuppressWarnings("unchecked")
    private static <T extends Throwable> void raise(Throwable thrown) throws T {
        throw (T) thrown;
    }

    @Test
    void goesOnWithoutAListenerThatHangs_andTellsItTheRestWhenItComesBack() throws InterruptedException {
        var goOn = new CountDownLatch(1);
        var slow = new LinkedBlockingQueue<Changed>();
        var quick = new LinkedBlockingQueue<Long>();
        strict.listen(news -> {
            slow.add(news);
            await(goOn);
        });
        strict.listen(news -> quick.add(news.revision()));
        for (long revision = 1; revision <= 3; revision++) {
            strict.committed(news(revision));
            assertThat(next(quick)).isEqualTo(revision);
        }
        assertThat(next(slow)).isEqualTo(news(1));
        assertThat(slow).as("it is still busy with the first").isEmpty();
        assertThat(next(logged)).startsWith("a listener is too slow");
        goOn.countDown();
        assertThat(next(slow)).isEqualTo(new Changed(3, Set.of(document(2), document(3)), true));
        strict.committed(news(4));
        assertThat(next(quick)).isEqualTo(4);
        assertThat(next(slow)).isEqualTo(news(4));
        assertThat(logged).as("named once").isEmpty();
    }

    @Test
    void tellsInOrder_joinsBursts_andNobodyAfterItsEnd() throws InterruptedException {
        var heard = new LinkedBlockingQueue<Changed>();
        var ended = new LinkedBlockingQueue<Changed>();
        patient.listen(ended::add).close();
        patient.listen(heard::add);
        long last = 500;
        for (long revision = 1; revision <= last; revision++) {
            patient.committed(news(revision));
        }
        long before = 0;
        Set<DocRef> told = new java.util.HashSet<>();
        while (before < last) {
            Changed news = next(heard);
            assertThat(news.revision()).isGreaterThan(before);
            before = news.revision();
            told.addAll(news.documents());
        }
        assertThat(told).hasSize((int) last);
        assertThat(ended).isEmpty();
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(DEADLINE_S, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new AssertionError("nobody interrupts a listener", e);
        }
    }
}
