package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

class WriterThreadTest {

    @Test
    void closesOnlyWhenAllIsWritten_alsoForACallerWhoIsInterrupted() throws InterruptedException {
        var writer = new WriterThread();
        var begun = new CountDownLatch(1);
        var written = new AtomicBoolean();
        writer.begin(() -> {
            begun.countDown();
            pause();
            written.set(true);
        });
        begun.await();
        Thread.currentThread().interrupt();
        writer.close();

        assertThat(Thread.interrupted()).isTrue();
        assertThat(written).isTrue();
    }

    private static void pause() {
        try {
            Thread.sleep(200);
        } catch (InterruptedException e) {
            throw new AssertionError("nobody interrupts the writer", e);
        }
    }
}
