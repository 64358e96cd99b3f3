package org.glintery.benchmarks.packaged;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.glintery.benchmarks.BenchmarkFailed;

/**
 * The window opened once with the stopwatch in it.
 *
 * @param openedMs from starting the launcher until Shelves shows its rows and one search was answered
 * @param keysUs microseconds of each key that was typed afterwards
 */
public record TimedWindow(long openedMs, List<Long> keysUs) {

    private static final int DEADLINE_MINUTES = 4;

    /** Opens a workshop, types the queries of a file if there is one, and ends. */
    public static TimedWindow open(Application application, Path cluster, Path workshop, Optional<Path> queries)
            throws IOException, InterruptedException {
        if (System.getenv("DISPLAY") == null) {
            throw new BenchmarkFailed("the window needs a display; install xvfb");
        }
        Path file = Files.createTempFile("stopwatch", ".txt");
        Map<String, String> properties = new TreeMap<>(Map.of("glintery.stopwatch", file.toString()));
        queries.ifPresent(path -> properties.put(
                "glintery.stopwatch.queries", path.toAbsolutePath().toString()));
        long startedMs = System.currentTimeMillis();
        Process process = application.window(workshop, cluster, properties);
        boolean ended = process.waitFor(DEADLINE_MINUTES, TimeUnit.MINUTES);
        if (!ended) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
        List<String> lines = Files.readAllLines(file);
        Files.delete(file);
        if (!ended || process.exitValue() != 0 || lines.isEmpty()) {
            throw new BenchmarkFailed("the window did not come to its end");
        }
        return read(lines, startedMs);
    }

    private static TimedWindow read(List<String> lines, long startedMs) {
        long openedMs = 0;
        List<Long> keysUs = new ArrayList<>();
        for (String line : lines) {
            String[] words = line.split(" ");
            long value = Long.parseLong(words[1]);
            if (words[0].equals("opened")) {
                openedMs = value - startedMs;
            } else {
                keysUs.add(value);
            }
        }
        return new TimedWindow(openedMs, keysUs);
    }
}
