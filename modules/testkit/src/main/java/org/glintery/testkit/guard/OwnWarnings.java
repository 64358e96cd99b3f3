package org.glintery.testkit.guard;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;

/** Collects the warnings that some packages log or appear in, from when it is made. Any thread. */
public final class OwnWarnings implements AutoCloseable {
    private final String start;
    private final List<String> seen = new CopyOnWriteArrayList<>();
    private final Handler collector = new Collector();

    private OwnWarnings(String start) {
        this.start = start;
    }

    /** @param start of the packages' names, such as {@code org.glintery.} */
    public static OwnWarnings of(String start) {
        OwnWarnings warnings = new OwnWarnings(start);
        Logger.getLogger("").addHandler(warnings.collector);
        return warnings;
    }

    public List<String> seen() {
        return List.copyOf(seen);
    }

    @Override
    public void close() {
        Logger.getLogger("").removeHandler(collector);
    }

    private boolean isOwn(LogRecord line) {
        if (line.getLoggerName() != null && line.getLoggerName().startsWith(start)) {
            return true;
        }
        for (Throwable t = line.getThrown(); t != null; t = t.getCause()) {
            for (StackTraceElement frame : t.getStackTrace()) {
                if (frame.getClassName().startsWith(start)) {
                    return true;
                }
            }
        }
        return false;
    }

    private final class Collector extends Handler {
        @Override
        public void publish(LogRecord line) {
            if (line.getLevel().intValue() >= Level.WARNING.intValue() && isOwn(line)) {
                seen.add(line.getLoggerName() + ": " + line.getMessage() + " " + line.getThrown());
            }
        }

        @Override
        public void flush() {
            // nothing is held back
        }

        @Override
        public void close() {
            // nothing is open
        }
    }
}
