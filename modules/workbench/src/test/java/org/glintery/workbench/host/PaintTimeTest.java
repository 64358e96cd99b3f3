package org.glintery.workbench.host;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class PaintTimeTest {
    private static final long SLOW = TimeUnit.MILLISECONDS.toNanos(101);
    private static final long QUICK = TimeUnit.MILLISECONDS.toNanos(100);

    @Test
    void forgivesTwoSlowPaints_butNotAThirdAtOnce() {
        var time = new PaintTime();
        assertThat(time.tookTooLong(SLOW, SLOW)).isFalse();
        assertThat(time.tookTooLong(SLOW, SLOW)).isFalse();
        assertThat(time.tookTooLong(SLOW, SLOW)).isTrue();
    }

    @Test
    void beginsAnew_afterAQuickOne() {
        var time = new PaintTime();
        time.tookTooLong(SLOW, SLOW);
        time.tookTooLong(SLOW, SLOW);
        assertThat(time.tookTooLong(QUICK, QUICK)).isFalse();
        assertThat(time.tookTooLong(SLOW, SLOW)).isFalse();
    }

    @Test
    void counts_aPaintThatWaitsInsteadOfWorking() {
        var time = new PaintTime();
        long waited = TimeUnit.MILLISECONDS.toNanos(1001);
        time.tookTooLong(0, waited);
        time.tookTooLong(0, waited);
        assertThat(time.tookTooLong(0, waited)).isTrue();
        assertThat(time.tookTooLong(0, waited - TimeUnit.MILLISECONDS.toNanos(1)))
                .as("as long as a busy computer may take")
                .isFalse();
    }
}
