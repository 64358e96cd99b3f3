package org.glintery.testkit;

import java.awt.EventQueue;
import java.lang.reflect.InvocationTargetException;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;

/** The event thread in tests. */
public final class EventThread {
    private EventThread() {}

    /** Does something on the event thread and gives what came of it; what is thrown there is thrown here. */
    public static <T> T call(Callable<T> work) {
        AtomicReference<T> value = new AtomicReference<>();
        AtomicReference<Exception> thrown = new AtomicReference<>();
        try {
            EventQueue.invokeAndWait(() -> {
                try {
                    value.set(work.call());
                } catch (Exception e) { // told to whoever asked
                    thrown.set(e);
                }
            });
        } catch (InterruptedException e) {
            throw new AssertionError("interrupted while waiting for the event thread", e);
        } catch (InvocationTargetException e) {
            throw new AssertionError("failed on the event thread", e.getCause());
        }
        if (thrown.get() != null) {
            throw new AssertionError("failed on the event thread: " + thrown.get(), thrown.get());
        }
        return value.get();
    }

    public static void run(Runnable work) {
        call(() -> {
            work.run();
            return null;
        });
    }

    /** @throws IllegalStateException on any other thread */
    static void assertOn() {
        if (!EventQueue.isDispatchThread()) {
            throw new IllegalStateException("a screen's work off the event thread");
        }
    }
}
