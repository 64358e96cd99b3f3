package org.glintery.benchmarks.packaged;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.glintery.benchmarks.BenchmarkFailed;

/** A running {@code drills post -}: lines go in, an answer a line comes out. One thread. */
public final class Posting implements AutoCloseable {

    private final Process process;
    private final OutputStream in;
    private final BufferedReader out;

    public Posting(Application application, Path workshop) throws IOException {
        process = application.verb(workshop, "drills", "post", "-");
        in = process.getOutputStream();
        out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    /** Sends lines and waits for an answer to each. @return the seconds from the first byte to the last answer */
    public double send(List<byte[]> lines) throws IOException {
        long start = System.nanoTime();
        CompletableFuture<Void> sending = CompletableFuture.runAsync(() -> write(lines));
        for (int i = 0; i < lines.size(); i++) {
            String answer = out.readLine();
            if (answer == null || answer.contains("refused")) {
                throw new BenchmarkFailed("instead of an id came " + answer);
            }
        }
        double seconds = (System.nanoTime() - start) / 1e9;
        sending.join();
        return seconds;
    }

    private void write(List<byte[]> lines) {
        try {
            for (byte[] line : lines) {
                in.write(line);
            }
            in.flush();
        } catch (IOException e) {
            throw new BenchmarkFailed("the process takes no more lines: " + e.getMessage());
        }
    }

    /** Ends the stream and waits until the workshop is closed. */
    @Override
    public void close() throws IOException {
        in.close();
        try {
            if (!process.waitFor(2, TimeUnit.MINUTES) || process.exitValue() != 0) {
                throw new BenchmarkFailed("posting did not end well");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new BenchmarkFailed("interrupted");
        }
    }
}
