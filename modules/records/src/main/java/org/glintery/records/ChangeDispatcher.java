package org.glintery.records;

import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.glintery.api.workshop.Changed;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.Workshop;

/**
 * Tells listeners of commits, in order, on one thread of its own and under no lock; bursts coalesce. A listener that
 * overruns its deadline is named once and left alone with the thread it holds, and another takes over: it hears the rest,
 * joined, when it comes back.
 */
final class ChangeDispatcher implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(ChangeDispatcher.class.getName());
    private static final Duration DEADLINE = Duration.ofSeconds(5);

    /** Ends the telling. */
    private static final Listener NOBODY = new Listener(news -> {});

    private final long deadlineMs;
    private final List<Listener> listeners = new CopyOnWriteArrayList<>();
    private final LinkedBlockingQueue<Listener> due = new LinkedBlockingQueue<>();
    private final ScheduledThreadPoolExecutor watch = new ScheduledThreadPoolExecutor(1, work -> daemon(work, "watch"));
    private volatile Thread teller;

    ChangeDispatcher() {
        this(DEADLINE);
    }

    ChangeDispatcher(Duration deadline) {
        deadlineMs = deadline.toMillis();
        watch.setRejectedExecutionHandler(new ThreadPoolExecutor.DiscardPolicy()); // closed: nobody is told any more
        watch.setRemoveOnCancelPolicy(true);
        watch.setKeepAliveTime(deadlineMs, TimeUnit.MILLISECONDS);
        watch.allowCoreThreadTimeOut(true);
    }

    private static Thread daemon(Runnable work, String name) {
        var made = new Thread(work, "workshop news " + name);
        made.setDaemon(true);
        return made;
    }

    /** One who listens, and the news that wait for it. */
    private static final class Listener {
        private final Consumer<Changed> told;
        private Changed waiting;
        private boolean busy;
        private boolean reported;

        Listener(Consumer<Changed> told) {
            this.told = told;
        }

        /** Whether it has to be put in the queue: it is neither there nor being told. */
        synchronized boolean add(Changed news) {
            boolean idle = waiting == null && !busy;
            waiting = waiting == null ? news : joined(waiting, news);
            return idle;
        }

        synchronized Changed take() {
            Changed news = waiting;
            waiting = null;
            busy = true;
            return news;
        }

        /** Whether more came in the meantime. */
        synchronized boolean done() {
            busy = false;
            return waiting != null;
        }

        synchronized boolean reportOnce() {
            boolean first = !reported;
            reported = true;
            return first;
        }

        private static Changed joined(Changed older, Changed newer) {
            Set<DocRef> documents = new HashSet<>(older.documents());
            documents.addAll(newer.documents());
            return new Changed(newer.revision(), documents, older.ledger() || newer.ledger());
        }

        String name() {
            return told.getClass().getName();
        }
    }

    Workshop.Registration listen(Consumer<Changed> told) {
        var listener = new Listener(told);
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    void committed(Changed news) {
        for (Listener listener : listeners) {
            if (listener.add(news)) {
                due.add(listener);
            }
        }
        if (teller == null && !listeners.isEmpty()) {
            takeOver(null);
        }
    }

    private synchronized void takeOver(Thread from) {
        if (teller == from && !watch.isShutdown()) {
            teller = daemon(this::tellAll, "teller");
            teller.start();
        }
    }

    private void tellAll() {
        try {
            Listener next = due.take();
            while (next != NOBODY) {
                tell(next);
                if (teller != Thread.currentThread()) {
                    return;
                }
                next = due.take();
            }
        } catch (InterruptedException e) {
            throw new IllegalStateException("nobody interrupts the teller", e);
        }
    }

    private void tell(Listener listener) {
        if (!listeners.contains(listener)) {
            return;
        }
        Changed news = listener.take();
        Thread me = Thread.currentThread();
        ScheduledFuture<?> overrun = watch.schedule(() -> overrun(listener, me), deadlineMs, TimeUnit.MILLISECONDS);
        try {
            listener.told.accept(news);
        } catch (RuntimeException | Error e) { // foreign code: whatever it was, the others must hear the news
            if (listener.reportOnce()) {
                LOG.log(Level.WARNING, "a listener failed: " + listener.name(), e);
            }
        } finally {
            overrun.cancel(false);
            if (listener.done()) {
                due.add(listener);
            }
        }
    }

    private void overrun(Listener listener, Thread held) {
        if (listener.reportOnce()) {
            LOG.warning("a listener is too slow, and the others go on without it: " + listener.name());
        }
        takeOver(held);
    }

    @Override
    public void close() {
        listeners.clear();
        watch.shutdownNow();
        due.add(NOBODY);
    }
}
