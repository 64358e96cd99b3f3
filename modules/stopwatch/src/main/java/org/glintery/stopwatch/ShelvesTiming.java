package org.glintery.stopwatch;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.Timer;
import org.openide.LifecycleManager;
import org.openide.windows.OnShowing;

/**
 * Times the window Shelves and ends the application, when it is started with {@code -J-Dglintery.stopwatch=FILE}. The
 * file gets a line {@code opened} with the moment, in milliseconds since 1970, at which rows were shown and one search
 * was answered, and with {@code -J-Dglintery.stopwatch.queries=FILE} a line {@code key} with the microseconds of each key.
 */
@OnShowing
public final class ShelvesTiming implements Runnable {

    private static final Logger LOG = Logger.getLogger(ShelvesTiming.class.getName());
    private static final int LOOK_EVERY_MS = 5;
    private static final char FIRST_KEY = 'a';

    @Override
    public void run() {
        if (System.getProperty("glintery.stopwatch") != null) {
            Timer looking = new Timer(LOOK_EVERY_MS, null);
            looking.addActionListener(tick -> ShelvesWindow.ready().ifPresent(shelves -> {
                looking.stop();
                opened(shelves);
            }));
            looking.start();
        }
    }

    private static void opened(ShelvesWindow shelves) {
        shelves.paintRows();
        shelves.type(FIRST_KEY);
        shelves.paintRows();
        long openedAtMs = System.currentTimeMillis();
        shelves.clear();
        TypedQueries typed = new TypedQueries(shelves);
        new Thread(() -> measure(openedAtMs, typed), "Stopwatch").start();
    }

    private static void measure(long openedAtMs, TypedQueries typed) {
        int code = 1;
        try {
            List<String> lines = new ArrayList<>(List.of("opened " + openedAtMs));
            Optional<String> queries = Optional.ofNullable(System.getProperty("glintery.stopwatch.queries"));
            if (queries.isPresent()) {
                typed.type(Files.readAllLines(Path.of(queries.get()))).forEach(key -> lines.add("key " + key));
            }
            Files.write(Path.of(System.getProperty("glintery.stopwatch")), lines);
            code = 0;
        } catch (IOException | InterruptedException | InvocationTargetException | IllegalStateException e) {
            LOG.log(Level.SEVERE, "Nothing could be measured", e);
        }
        LifecycleManager.getDefault().exit(code);
    }
}
