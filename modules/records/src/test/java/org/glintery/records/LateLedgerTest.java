package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.SQLException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(30)
class LateLedgerTest {
    private final WriterThread writer = new WriterThread();
    private final AtomicInteger reads = new AtomicInteger();

    @AfterEach
    void close() {
        writer.close();
    }

    private static LateLedger.Read nothing() {
        return new LateLedger.Read(Booked.NOTHING, null);
    }

    @Test
    void isReadAgain_whenThereWasTooLittleMemory() {
        var ledger = new LateLedger(writer, () -> {
            if (reads.incrementAndGet() == 1) {
                throw new OutOfMemoryError("planted");
            }
            return nothing();
        });
        assertThatThrownBy(ledger::booked).isInstanceOf(LateLedger.UnreadableException.class);
        assertThat(ledger.booked()).isSameAs(Booked.NOTHING);
        assertThat(ledger.booked()).isSameAs(Booked.NOTHING);
        assertThat(reads).hasValue(2);
    }

    @Test
    void isReadOnce_whenItIsDamaged() {
        var ledger = new LateLedger(writer, () -> {
            reads.incrementAndGet();
            throw new SQLException("planted");
        });
        for (int again = 0; again < 3; again++) {
            assertThatThrownBy(ledger::booked).isInstanceOf(LateLedger.UnreadableException.class);
        }
        assertThat(reads).hasValue(1);
    }

    @Test
    void isNotWaitedFor_onTheEventThread() throws Exception {
        var goOn = new CountDownLatch(1);
        var ledger = new LateLedger(writer, () -> {
            await(goOn);
            return nothing();
        });
        SwingUtilities.invokeAndWait(
                () -> assertThatThrownBy(ledger::booked).isInstanceOf(IllegalStateException.class));
        assertThat(ledger.isBeingRead()).isTrue();
        goOn.countDown();
        ledger.booked();
        assertThat(ledger.isBeingRead()).isFalse();
        SwingUtilities.invokeAndWait(() -> assertThat(ledger.booked()).isSameAs(Booked.NOTHING));
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
