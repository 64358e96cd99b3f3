package org.glintery.workbench.host;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;

class ForeignCallTest {
    private static final Object ADD_ON = new Object() {};

    @Test
    void givesWhatTheCallGives() {
        assertThat(ForeignCall.make(ADD_ON, () -> "care notes")).isEqualTo("care notes");
    }

    @Test
    void writesWhoseCodeHangsToTheLog_whileItHangs_andThenSaysThatItWasTooSlow() {
        Logger log = Logger.getLogger(ForeignCall.class.getName());
        var reported = new CountDownLatch(1);
        Handler watching = new Handler() {
            @Override
            public void publish(LogRecord line) {
                if (line.getMessage().contains(ADD_ON.getClass().getName())) {
                    reported.countDown();
                }
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        log.addHandler(watching);
        log.setUseParentHandlers(false);
        try {
            assertThatThrownBy(() -> ForeignCall.make(ADD_ON, () -> awaited(reported), 1))
                    .isInstanceOf(TooSlowException.class);
        } finally {
            log.setUseParentHandlers(true);
            log.removeHandler(watching);
        }
    }

    private static boolean awaited(CountDownLatch latch) {
        try {
            return latch.await(30, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void takesTheOtherValue_whenTheCallThrows() {
        int place = ForeignCall.makeOr(7, ADD_ON, () -> {
            throw new IllegalStateException("planted");
        });
        assertThat(place).isEqualTo(7);
    }
}
