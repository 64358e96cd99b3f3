package org.glintery.workbench.parts;

import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Runs work in the order in which it came, and only so much at once that what came first is done first. Work that takes
 * longer than a while goes on, but no longer holds up the rest: so one part that hangs can't keep the others from view.
 * Any thread.
 */
final class Turns implements Executor {
    private final Executor threads;
    private final Executor later;
    private final int atOnce;
    private final Queue<Runnable> waiting = new ArrayDeque<>();
    private int running;

    /**
     * @param threads takes any amount of work
     * @param patienceMs after which work no longer counts as running
     */
    Turns(Executor threads, int atOnce, long patienceMs) {
        this(threads, CompletableFuture.delayedExecutor(patienceMs, TimeUnit.MILLISECONDS, threads), atOnce);
    }

    /** @param later runs what it is given when patience is over */
    Turns(Executor threads, Executor later, int atOnce) {
        this.threads = threads;
        this.later = later;
        this.atOnce = atOnce;
    }

    @Override
    public synchronized void execute(Runnable work) {
        waiting.add(work);
        next();
    }

    private synchronized void next() {
        while (running < atOnce && !waiting.isEmpty()) {
            running++;
            Runnable work = waiting.remove();
            var counts = new AtomicBoolean(true);
            try {
                threads.execute(() -> {
                    try {
                        work.run();
                    } finally {
                        over(counts);
                    }
                });
                later.execute(() -> over(counts));
            } catch (RuntimeException | Error e) { // no thread for it, such as for want of memory: its turn is over
                over(counts);
                throw e;
            }
        }
    }

    private void over(AtomicBoolean counts) {
        if (counts.getAndSet(false)) {
            synchronized (this) {
                running--;
                next();
            }
        }
    }
}
