package org.glintery.records;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.glintery.api.workshop.Changed;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.Workshop;

/** Tells listeners of commits, in order, on one thread of its own and under no lock; bursts coalesce. */
final class ChangeDispatcher implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(ChangeDispatcher.class.getName());

    private final List<Consumer<Changed>> listeners = new CopyOnWriteArrayList<>();
    private final Set<Consumer<Changed>> reported = java.util.concurrent.ConcurrentHashMap.newKeySet();
    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> {
        var made = new Thread(work, "workshop news");
        made.setDaemon(true);
        return made;
    });
    private Changed waiting;

    Workshop.Registration listen(Consumer<Changed> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    void committed(Changed news) {
        boolean first;
        synchronized (this) {
            first = waiting == null;
            waiting = first ? news : joined(waiting, news);
        }
        if (first) {
            thread.execute(this::tell);
        }
    }

    private static Changed joined(Changed older, Changed newer) {
        Set<DocRef> documents = new HashSet<>(older.documents());
        documents.addAll(newer.documents());
        return new Changed(newer.revision(), documents, older.ledger() || newer.ledger());
    }

    private void tell() {
        Changed news;
        synchronized (this) {
            news = waiting;
            waiting = null;
        }
        for (Consumer<Changed> listener : listeners) {
            try {
                listener.accept(news);
            } catch (RuntimeException e) {
                if (reported.add(listener)) {
                    LOG.log(
                            Level.WARNING,
                            "a listener failed: " + listener.getClass().getName(),
                            e);
                }
            }
        }
    }

    @Override
    public void close() {
        listeners.clear();
        thread.shutdown();
    }
}
