package org.glintery.exchange.disk;

/** Reading and writing files would freeze the screen. */
public final class OffTheEventThread {
    private OffTheEventThread() {}

    /** By the thread's name, since asking the toolkit would start it in jobs without a screen. */
    public static void check() {
        if (Thread.currentThread().getName().startsWith("AWT-EventQueue")) {
            throw new IllegalStateException("disk work on the event thread");
        }
    }
}
