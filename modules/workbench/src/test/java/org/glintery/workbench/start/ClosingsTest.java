package org.glintery.workbench.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class ClosingsTest {
    private static final long PATIENCE_S = 20;
    private final ExecutorService background = Executors.newSingleThreadExecutor();
    private final Closings closings = new Closings(background);

    @AfterEach
    void end() {
        background.shutdownNow();
    }

    @Test
    void waitsForWhatIsStillBeingClosed() throws InterruptedException {
        CountDownLatch copied = new CountDownLatch(1);
        AtomicBoolean closed = new AtomicBoolean();
        closings.begin(() -> closed.set(isOver(copied)));
        AtomicBoolean closedBeforeTheEnd = new AtomicBoolean();
        Thread ending = new Thread(() -> {
            closings.await();
            closedBeforeTheEnd.set(closed.get());
        });
        ending.start();
        ending.join(100);
        assertThat(ending.isAlive()).as("waits while it is copied").isTrue();
        copied.countDown();
        ending.join(TimeUnit.SECONDS.toMillis(PATIENCE_S));
        assertThat(closedBeforeTheEnd).isTrue();
    }

    @Test
    void waitsForNothing_whenAllIsClosed_alsoAfterAFault() {
        List<Runnable> kept = new ArrayList<>();
        Closings later = new Closings(kept::add);
        later.begin(() -> {
            throw new IllegalStateException("the folder went away");
        });
        kept.forEach(Runnable::run);
        later.await();
        assertThat(kept).hasSize(1);
    }

    private static boolean isOver(CountDownLatch latch) {
        try {
            return latch.await(PATIENCE_S, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            return false;
        }
    }
}
