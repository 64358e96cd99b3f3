package org.glintery.workbench.host;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.TimeUnit;

/**
 * How long painting takes. Counts the processor's time where that is known, so that a busy computer makes nobody slow; one
 * slow paint is forgiven, since the first ones load classes. Event thread.
 */
public final class PaintTime {
    private static final long MOST_NS = TimeUnit.MILLISECONDS.toNanos(100);
    private static final int FORGIVEN = 2;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private long start;
    private int slow;

    public void begin() {
        start = now();
    }

    /** Whether this was one slow paint too many. */
    public boolean endedTooLate() {
        return tookTooLong(now() - start);
    }

    boolean tookTooLong(long ns) {
        slow = ns > MOST_NS ? slow + 1 : 0;
        return slow > FORGIVEN;
    }

    private static long now() {
        return THREADS.isCurrentThreadCpuTimeSupported() ? THREADS.getCurrentThreadCpuTime() : System.nanoTime();
    }
}
