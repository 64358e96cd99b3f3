package org.glintery.selftest;

import java.awt.AWTEvent;
import java.awt.Toolkit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ThreadPoolExecutor;

/** What the application is at work on that may yet be shown. */
final class Work {
    private static final String OURS = "org.glintery.";

    private Work() {}

    /** What waits for the event thread, and where other threads are that run code of ours or see what a pool has to do. */
    static List<String> underWay() {
        List<String> underWay = new ArrayList<>();
        AWTEvent next = Toolkit.getDefaultToolkit().getSystemEventQueue().peekEvent();
        if (next != null) {
            underWay.add(next.toString());
        }
        Thread.getAllStackTraces().forEach((thread, frames) -> {
            if (thread != Thread.currentThread()
                    && runs(thread)
                    && Arrays.stream(frames).anyMatch(Work::mayShow)) {
                underWay.add(thread + " " + Arrays.toString(frames));
            }
        });
        return underWay;
    }

    private static boolean runs(Thread thread) {
        return thread.getState() == Thread.State.RUNNABLE || thread.getState() == Thread.State.BLOCKED;
    }

    private static boolean mayShow(StackTraceElement frame) {
        return frame.getClassName().startsWith(OURS) || frame.getClassName().equals(ThreadPoolExecutor.class.getName());
    }
}
