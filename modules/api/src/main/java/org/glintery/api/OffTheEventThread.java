package org.glintery.api;

/** Databases and files are used off the event thread: there they would freeze the screen. */
@Stable
public final class OffTheEventThread {
    private OffTheEventThread() {}

    /** @throws IllegalStateException on the event thread */
    public static void check() {
        if (isElsewhere()) {
            return;
        }
        throw new IllegalStateException("disk work on the event thread");
    }

    /** By the thread's name, since asking the toolkit would start it in jobs without a screen. */
    public static boolean isElsewhere() {
        return !Thread.currentThread().getName().startsWith("AWT-EventQueue");
    }
}
