package org.glintery.stopwatch;

import java.awt.EventQueue;
import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/** Types queries key by key and measures each key, from its press until the list of pieces has its new rows. */
final class TypedQueries {

    private static final int DEADLINE_S = 20;
    private final ShelvesWindow shelves;
    private final Semaphore updates = new Semaphore(0);
    private volatile long updatedAt;

    /** Event thread. */
    TypedQueries(ShelvesWindow shelves) {
        this.shelves = shelves;
        shelves.whenUpdated(() -> {
            updatedAt = System.nanoTime();
            updates.release();
        });
    }

    /** @return microseconds for each key; the key that clears the field after a query is one of them */
    List<Long> type(List<String> queries) throws InterruptedException, InvocationTargetException {
        List<Long> keys = new ArrayList<>();
        for (String query : queries) {
            for (char key : query.toCharArray()) {
                keys.add(press(() -> shelves.type(key)));
            }
            keys.add(press(shelves::clear));
        }
        return keys;
    }

    private long press(Runnable key) throws InterruptedException, InvocationTargetException {
        updates.drainPermits();
        long pressed = System.nanoTime();
        long[] handled = new long[1];
        EventQueue.invokeAndWait(() -> {
            key.run();
            handled[0] = System.nanoTime();
        });
        if (!updates.tryAcquire(DEADLINE_S, TimeUnit.SECONDS)) {
            throw new IllegalStateException("a key changed nothing on the shelves");
        }
        // what the key set off is painted before the next one comes
        EventQueue.invokeAndWait(shelves::paintRows);
        return TimeUnit.NANOSECONDS.toMicros(Math.max(handled[0], updatedAt) - pressed);
    }
}
