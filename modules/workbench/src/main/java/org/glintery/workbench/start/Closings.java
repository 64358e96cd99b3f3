package org.glintery.workbench.start;

import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Workshops that are being closed in the background, which may still be copied. The application waits for them when it ends:
 * a copy that breaks off leaves a part of a file in the folder of copies. Any thread.
 */
final class Closings {
    private static final Logger LOG = Logger.getLogger(Closings.class.getName());
    private final Set<CompletableFuture<Void>> underWay = ConcurrentHashMap.newKeySet();
    private final Executor background;

    Closings(Executor background) {
        this.background = background;
    }

    void begin(Runnable closing) {
        CompletableFuture<Void> done = new CompletableFuture<>();
        underWay.add(done);
        background.execute(() -> {
            try {
                closing.run();
            } catch (RuntimeException e) {
                LOG.log(Level.WARNING, "Closing a workshop failed", e);
            } finally {
                underWay.remove(done);
                done.complete(null);
            }
        });
    }

    /** Returns when all that were begun are closed. Not on the event thread. */
    void await() {
        CompletableFuture.allOf(underWay.toArray(CompletableFuture[]::new)).join();
    }
}
