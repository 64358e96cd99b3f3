package org.glintery.testkit;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import org.glintery.api.workshop.Changed;
import org.glintery.api.workshop.Workshop;

/** Tells listeners of changes, in order, on one thread of its own. */
final class MemoryNews implements AutoCloseable {
    private final List<Consumer<Changed>> listeners = new CopyOnWriteArrayList<>();
    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> {
        var made = new Thread(work, "news of a workshop in memory");
        made.setDaemon(true);
        return made;
    });

    Workshop.Registration listen(Consumer<Changed> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    int listeners() {
        return listeners.size();
    }

    void tell(Changed changed) {
        thread.execute(() -> listeners.forEach(listener -> listener.accept(changed)));
    }

    /** Other work that belongs on a background thread. */
    ExecutorService background() {
        return thread;
    }

    @Override
    public void close() {
        thread.shutdown();
    }
}
