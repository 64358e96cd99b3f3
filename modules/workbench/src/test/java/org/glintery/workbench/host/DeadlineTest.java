package org.glintery.workbench.host;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class DeadlineTest {
    @Test
    void endsWorkThatIsNotDoneInTime() {
        var work = Deadline.set(new CompletableFuture<String>(), 1, () -> false);
        assertThatThrownBy(() -> work.get(30, TimeUnit.SECONDS))
                .isInstanceOf(ExecutionException.class)
                .hasCauseInstanceOf(TimeoutException.class);
    }

    @Test
    void beginsAnew_asLongAsTheWorkIsExcused() {
        var asked = new AtomicInteger();
        var work = Deadline.set(new CompletableFuture<String>(), 1, () -> asked.incrementAndGet() < 4);
        assertThatThrownBy(() -> work.get(30, TimeUnit.SECONDS)).hasCauseInstanceOf(TimeoutException.class);
        assertThat(asked).hasValue(4);
    }

    @Test
    void leavesWorkAlone_thatWasDoneInTime() throws Exception {
        var work = new CompletableFuture<String>();
        work.complete("done");
        assertThat(Deadline.set(work, 1, () -> false).get(30, TimeUnit.SECONDS)).isEqualTo("done");
    }
}
