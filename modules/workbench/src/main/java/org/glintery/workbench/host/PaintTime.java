package org.glintery.workbench.host;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

/**
 * How long painting takes. Counts the processor's time where that is known, so that a busy computer makes nobody slow, and
 * the clock's where it is far too long by that, since waiting takes no processor. One slow paint is forgiven: the first ones
 * load classes. A paint that hangs can't be ended, but whose it is goes to the log. Event thread.
 */
public final class PaintTime {
    private static final long MOST_NS = TimeUnit.MILLISECONDS.toNanos(100);
    private static final long MOST_BY_THE_CLOCK_NS = TimeUnit.SECONDS.toNanos(1);
    private static final int FORGIVEN = 2;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private long start;
    private long startByTheClock;
    private Future<?> alarm;
    private int slow;

    /** @param whose code is about to paint */
    public void begin(Object whose) {
        alarm = ForeignCall.alarm(whose, ForeignCall.DEADLINE_MS);
        startByTheClock = System.nanoTime();
        start = now();
    }

    /** Whether this was one slow paint too many. */
    public boolean endedTooLate() {
        alarm.cancel(false);
        return tookTooLong(now() - start, System.nanoTime() - startByTheClock);
    }

    boolean tookTooLong(long ns, long byTheClockNs) {
        slow = ns > MOST_NS || byTheClockNs > MOST_BY_THE_CLOCK_NS ? slow + 1 : 0;
        return slow > FORGIVEN;
    }

    private static long now() {
        return THREADS.isCurrentThreadCpuTimeSupported() ? THREADS.getCurrentThreadCpuTime() : System.nanoTime();
    }
}
