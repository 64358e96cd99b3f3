package org.glintery.benchmarks.large;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;

/** Looks ten times a second how large a folder is, and remembers the most. */
public final class SizeWatch implements AutoCloseable {

    private static final int EVERY_MS = 100;

    private final Path folder;
    private final AtomicLong peak = new AtomicLong();
    private final ScheduledExecutorService looking = Executors.newSingleThreadScheduledExecutor();

    public SizeWatch(Path folder) {
        this.folder = folder;
        looking.scheduleWithFixedDelay(this::look, 0, EVERY_MS, TimeUnit.MILLISECONDS);
    }

    private void look() {
        peak.accumulateAndGet(bytes(folder), Math::max);
    }

    /** The most so far, in bytes. */
    public long peakBytes() {
        look();
        return peak.get();
    }

    /** All files of a folder, in bytes. Files that come and go meanwhile may be missed. */
    public static long bytes(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.mapToLong(SizeWatch::size).sum();
        } catch (NoSuchFileException e) {
            return 0;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static long size(Path file) {
        try {
            return Files.isRegularFile(file) ? Files.size(file) : 0;
        } catch (IOException e) {
            return 0; // it is gone again
        }
    }

    @Override
    public void close() {
        looking.shutdownNow();
    }
}
