package org.glintery.benchmarks.kill;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.glintery.benchmarks.BenchmarkFailed;
import org.glintery.benchmarks.packaged.Application;
import org.glintery.benchmarks.packaged.PostedLines;
import org.glintery.benchmarks.packaged.PostedMovement;

/** {@code drills post -} with lines without end, until its Java process is killed. */
final class KilledPosting {

    private static final int LEAST_IDS = 50;
    private static final int DEADLINE_S = 30;
    /** What a shell makes of a process that ended by signal 9. */
    private static final int KILLED = 128 + 9;

    private final Application application;
    private final PostedLines lines;
    private final Promises promises;

    KilledPosting(Application application, PostedLines lines, Promises promises) {
        this.application = application;
        this.lines = lines;
        this.promises = promises;
    }

    /** @param delayMs from the fiftieth id to the kill */
    void run(Path workshop, long delayMs) throws IOException, InterruptedException {
        int unreadBefore = promises.sentSoFar() - promises.printedSoFar();
        Process launcher = application.verb(workshop, "drills", "post", "-");
        CompletableFuture<Void> sending = CompletableFuture.runAsync(() -> sendWithoutEnd(launcher.getOutputStream()));
        var out = new BufferedReader(new InputStreamReader(launcher.getInputStream(), StandardCharsets.UTF_8));
        readUntil(out, delayMs);
        kill(java(launcher));
        // what it had printed into the pipe counts too, but for a line cut off
        StringBuilder rest = new StringBuilder();
        for (int c = out.read(); c >= 0; c = out.read()) {
            rest.append((char) c);
        }
        rest.substring(0, rest.lastIndexOf("\n") + 1).lines().forEach(line -> promises.printed(UUID.fromString(line)));
        if (!launcher.waitFor(DEADLINE_S, TimeUnit.SECONDS) || launcher.exitValue() != KILLED) {
            throw new BenchmarkFailed("the launcher did not tell that its process was killed");
        }
        awaitEnd(sending);
        if (promises.sentSoFar() - promises.printedSoFar() <= unreadBefore) {
            throw new BenchmarkFailed("no line was left unread when the process was killed");
        }
    }

    private void readUntil(BufferedReader out, long delayMs) throws IOException {
        long killAt = Long.MAX_VALUE;
        for (int ids = 1; System.nanoTime() < killAt; ids++) {
            String line = out.readLine();
            if (line == null) {
                throw new BenchmarkFailed("the process ended by itself");
            }
            promises.printed(UUID.fromString(line));
            if (ids == LEAST_IDS) {
                killAt = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(delayMs);
            }
        }
    }

    private void sendWithoutEnd(OutputStream in) {
        try {
            for (int count = 1; ; count = count % 9_999 + 1) {
                PostedMovement movement = lines.movement(count);
                promises.sent(movement);
                in.write((movement.json() + "\n").getBytes(StandardCharsets.UTF_8));
                in.flush();
            }
        } catch (IOException e) {
            // the pipe breaks when its reader is killed: that is the point
        }
    }

    /** The Java process that the launcher started: the launcher itself is only a shell. */
    private static ProcessHandle java(Process launcher) {
        List<ProcessHandle> found = launcher.descendants()
                .filter(handle -> handle.info()
                        .command()
                        .filter(command -> command.endsWith("java"))
                        .isPresent())
                .toList();
        if (found.size() != 1 || !found.get(0).isAlive()) {
            throw new BenchmarkFailed("there should be one living Java process, not " + found.size());
        }
        return found.get(0);
    }

    private static void kill(ProcessHandle java) throws InterruptedException {
        if (!java.destroyForcibly()) {
            throw new BenchmarkFailed("the Java process could not be killed");
        }
        try {
            java.onExit().get(DEADLINE_S, TimeUnit.SECONDS);
        } catch (ExecutionException | TimeoutException e) {
            throw new BenchmarkFailed("the Java process is not gone: " + e);
        }
    }

    private static void awaitEnd(CompletableFuture<Void> sending) throws InterruptedException {
        try {
            sending.get(DEADLINE_S, TimeUnit.SECONDS);
        } catch (ExecutionException | TimeoutException e) {
            throw new BenchmarkFailed("sending did not end: " + e);
        }
    }
}
