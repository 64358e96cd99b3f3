package org.glintery.charts.progress;

import java.util.concurrent.CancellationException;
import org.glintery.api.charts.Watch;

/**
 * Counts the steps of work on several threads and tells them to a watch. Once that cancels, every step is to be left out;
 * the thread that waits for all of them then hears of it. Any thread.
 */
public final class Steps {

    private final Watch watch;
    private final double all;
    private int done;
    private volatile boolean cancelled;

    /** @param all how many there are, at most */
    public Steps(Watch watch, int all) {
        this.watch = watch;
        this.all = Math.max(1, all);
    }

    /** Asked before each step; false when it is to be left out. */
    public boolean next() {
        if (cancelled || watch.isCancelled()) {
            cancelled = true;
            return false;
        }
        synchronized (this) {
            watch.reached(Math.min(1, done++ / all));
        }
        return true;
    }

    /** @throws CancellationException when a step was left out */
    public void check() {
        if (cancelled) {
            throw new CancellationException();
        }
    }
}
