package org.glintery.workbench.host;

import java.util.Optional;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openide.modules.ModuleInfo;
import org.openide.modules.Modules;

/**
 * A call of an add-on's code that has to be made on the event thread. Nothing can end it from outside: it is timed, and when
 * it does not come back in time, whoever it belongs to is written to the log from another thread while it hangs.
 */
public final class ForeignCall {
    /** What an add-on has for a call. */
    public static final long DEADLINE_MS = 5_000;

    private static final Logger LOG = Logger.getLogger(ForeignCall.class.getName());
    private static final ScheduledExecutorService WATCH = watch();

    private ForeignCall() {}

    private static ScheduledExecutorService watch() {
        var watch = new ScheduledThreadPoolExecutor(1, work -> {
            Thread thread = new Thread(work, "Watching add-ons");
            thread.setDaemon(true);
            return thread;
        });
        watch.setRemoveOnCancelPolicy(true); // an alarm a paint would pile up
        return watch;
    }

    /**
     * @param whose the code is
     * @throws TooSlowException when it came back, but too late
     */
    public static <T> T make(Object whose, Supplier<T> call) {
        return make(whose, call, DEADLINE_MS);
    }

    static <T> T make(Object whose, Supplier<T> call, long deadlineMs) {
        long start = System.nanoTime(); // before the alarm is set: whoever was reported was too slow
        Future<?> alarm = alarm(whose, deadlineMs);
        try {
            T value = call.get();
            if (System.nanoTime() - start > TimeUnit.MILLISECONDS.toNanos(deadlineMs)) {
                throw new TooSlowException();
            }
            return value;
        } finally {
            alarm.cancel(false);
        }
    }

    /** The same; what goes wrong is written to the log and another value taken instead. */
    public static <T> T makeOr(T instead, Object whose, Supplier<T> call) {
        try {
            return make(whose, call);
        } catch (RuntimeException | Error e) { // the border to add-ons: whatever it is, it is theirs
            LOG.log(Level.WARNING, "Failed: " + whose.getClass().getName(), e);
            return instead;
        }
    }

    /** Has whoever the running code belongs to written to the log after a while, unless it is cancelled before. */
    static Future<?> alarm(Object whose, long afterMs) {
        Thread here = Thread.currentThread();
        return WATCH.schedule(() -> report(whose, here), afterMs, TimeUnit.MILLISECONDS);
    }

    private static void report(Object whose, Thread hanging) {
        IllegalStateException place = new IllegalStateException("is here");
        place.setStackTrace(hanging.getStackTrace());
        LOG.log(Level.WARNING, "Holds up the window: " + whose.getClass().getName(), place);
    }

    /** What the user knows the module of some code by; empty outside the module system. */
    public static Optional<String> ownerOf(Object code) {
        return Optional.ofNullable(Modules.getDefault())
                .map(modules -> modules.ownerOf(code.getClass()))
                .map(ModuleInfo::getDisplayName);
    }
}
