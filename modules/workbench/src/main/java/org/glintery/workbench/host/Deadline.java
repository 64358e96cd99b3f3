package org.glintery.workbench.host;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;

/** When work of an add-on has taken too long. Any thread. */
public final class Deadline {
    private Deadline() {}

    /**
     * Ends the work with a {@link TimeoutException} when it is not done in time. While it may be waiting for something that
     * is not its fault, its time begins anew.
     *
     * @param excused whether it may be waiting so, asked when time is up
     */
    public static <T> CompletableFuture<T> set(CompletableFuture<T> work, long ms, BooleanSupplier excused) {
        CompletableFuture.delayedExecutor(ms, TimeUnit.MILLISECONDS).execute(() -> {
            if (work.isDone()) {
                return;
            }
            if (excused.getAsBoolean()) {
                set(work, ms, excused);
            } else {
                work.completeExceptionally(new TimeoutException());
            }
        });
        return work;
    }
}
