package org.glintery.records;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;
import org.glintery.api.GlinteryException;

/**
 * Makes each value once and remembers it. The making runs under no lock, so that it may ask for other
 * values; asking for the one being made is refused with a word about it instead of waiting for ever.
 */
final class OnceMap {
    private final Map<Object, Making> made = new ConcurrentHashMap<>();

    private static final class Making extends FutureTask<Object> {
        private final Thread maker = Thread.currentThread();

        Making(Supplier<?> supplier) {
            super(supplier::get);
        }
    }

    @SuppressWarnings("unchecked")
    <T> T get(Object key, Supplier<T> maker) {
        Making making = made.get(key);
        if (making == null) {
            var mine = new Making(maker);
            making = (Making) made.putIfAbsent(key, mine);
            if (making == null) {
                making = mine;
                mine.run();
            }
        }
        if (!making.isDone() && making.maker == Thread.currentThread()) {
            throw new GlinteryException("needs itself while it is made: " + key);
        }
        return (T) await(key, making);
    }

    private Object await(Object key, Making making) {
        boolean interrupted = false;
        try {
            while (true) {
                try {
                    return making.get();
                } catch (InterruptedException e) {
                    interrupted = true;
                } catch (ExecutionException e) {
                    made.remove(key, making);
                    if (e.getCause() instanceof RuntimeException cause) {
                        throw cause;
                    }
                    throw new GlinteryException("could not be made: " + key, e.getCause());
                }
            }
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
