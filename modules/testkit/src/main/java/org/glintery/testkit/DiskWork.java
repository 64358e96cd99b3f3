package org.glintery.testkit;

import java.util.LinkedHashMap;
import java.util.Map;

/** Tries disk work where it is forbidden. */
public final class DiskWork {
    /** What it is refused with. */
    public static final String REFUSED = "disk work on the event thread";

    private DiskWork() {}

    /**
     * Does each piece of work on a thread that passes for the event thread, and gives the words of those that refused,
     * by the names given. Waits for the thread.
     */
    public static Map<String, String> refusedOnTheEventThread(Map<String, Runnable> work) throws InterruptedException {
        Map<String, String> refused = new LinkedHashMap<>();
        var thread = new Thread(
                () -> work.forEach((name, disk) -> {
                    try {
                        disk.run();
                    } catch (IllegalStateException e) {
                        refused.put(name, e.getMessage());
                    }
                }),
                "AWT-EventQueue-0");
        thread.start();
        thread.join();
        return refused;
    }
}
