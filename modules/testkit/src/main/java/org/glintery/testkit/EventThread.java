package org.glintery.testkit;

import java.awt.EventQueue;

/** What may not be done on the event thread. */
final class EventThread {
    private EventThread() {}

    /** @throws IllegalStateException on the event thread, as the real workshop does */
    static void assertOff() {
        if (EventQueue.isDispatchThread()) {
            throw new IllegalStateException("disk work on the event thread");
        }
    }
}
