package org.glintery.records;

import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import org.glintery.api.GlinteryException;
import org.glintery.api.OffTheEventThread;

/** The one thread that owns the database. Nobody interrupts it: an interrupt in a write would close the file. */
final class WriterThread implements AutoCloseable {
    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> {
        var made = new Thread(work, "workshop writer");
        made.setDaemon(true);
        return made;
    });

    /** Thrown when the workshop was closed before. */
    static final class ClosedException extends GlinteryException {
        private static final long serialVersionUID = 1L;

        ClosedException() {
            super("the workshop was closed");
        }
    }

    /**
     * Runs on the writer thread after what was handed over before. Completes on a background thread, so that nothing
     * that hangs on the result runs on the writer's.
     */
    <T> CompletableFuture<T> hand(Callable<T> work) {
        var future = new CompletableFuture<T>();
        try {
            thread.execute(() -> {
                try {
                    T result = work.call();
                    future.completeAsync(() -> result);
                } catch (Exception | Error e) { // whoever waits must hear of it, whatever it was
                    future.completeAsync(() -> {
                        throw new CompletionException(e);
                    });
                }
            });
        } catch (RejectedExecutionException e) {
            throw new ClosedException();
        }
        return future;
    }

    /** Runs on the writer thread before all that is handed over later. */
    void begin(Runnable work) {
        try {
            thread.execute(work);
        } catch (RejectedExecutionException e) {
            throw new ClosedException();
        }
    }

    /** Runs on the writer thread and waits, also when the caller is interrupted. */
    <T> T call(Callable<T> work) {
        OffTheEventThread.check();
        Future<T> future;
        try {
            future = thread.submit(work);
        } catch (RejectedExecutionException e) {
            throw new ClosedException();
        }
        boolean interrupted = false;
        try {
            while (true) {
                try {
                    return future.get();
                } catch (InterruptedException e) {
                    interrupted = true;
                } catch (ExecutionException e) {
                    if (e.getCause() instanceof RuntimeException cause) {
                        throw cause;
                    }
                    throw new GlinteryException("the workshop's files could not be used", e.getCause());
                }
            }
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    boolean isClosed() {
        return thread.isShutdown();
    }

    /** Waits for all that was handed over, also when the caller is interrupted: the lock is given back afterwards. */
    @Override
    public void close() {
        thread.shutdown();
        boolean interrupted = false;
        boolean ended = false;
        while (!ended) {
            try {
                ended = thread.awaitTermination(1, TimeUnit.MINUTES);
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
