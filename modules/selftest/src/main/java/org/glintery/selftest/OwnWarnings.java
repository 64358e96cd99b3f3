package org.glintery.selftest;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.openide.modules.OnStart;

/** Collects warnings that our own code logs or appears in, from the start on. */
@OnStart
public final class OwnWarnings implements Runnable {
    private static final String OURS = "org.glintery.";
    private static final List<String> SEEN = new CopyOnWriteArrayList<>();

    @Override
    public void run() {
        Logger.getLogger("").addHandler(new Collector());
    }

    static List<String> seen() {
        return List.copyOf(SEEN);
    }

    private static final class Collector extends Handler {
        @Override
        public void publish(LogRecord line) {
            if (line.getLevel().intValue() >= Level.WARNING.intValue() && isOurs(line)) {
                SEEN.add(line.getLoggerName() + ": " + line.getMessage() + " " + line.getThrown());
            }
        }

        private static boolean isOurs(LogRecord line) {
            if (line.getLoggerName() != null && line.getLoggerName().startsWith(OURS)) {
                return true;
            }
            for (Throwable t = line.getThrown(); t != null; t = t.getCause()) {
                for (StackTraceElement frame : t.getStackTrace()) {
                    if (frame.getClassName().startsWith(OURS)) {
                        return true;
                    }
                }
            }
            return false;
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
