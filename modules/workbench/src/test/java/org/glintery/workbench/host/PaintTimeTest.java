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
        assertThat(time.tookTooLong(SLOW)).isFalse();
        assertThat(time.tookTooLong(SLOW)).isFalse();
        assertThat(time.tookTooLong(SLOW)).isTrue();
    }

    @Test
    void beginsAnew_afterAQuickOne() {
        var time = new PaintTime();
        time.tookTooLong(SLOW);
        time.tookTooLong(SLOW);
        assertThat(time.tookTooLong(QUICK)).isFalse();
        assertThat(time.tookTooLong(SLOW)).isFalse();
    }
}
