package org.glintery.benchmarks;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.glintery.benchmarks.large.Size;
import org.glintery.benchmarks.large.SizeWatch;
import org.glintery.benchmarks.packaged.PostedLines;
import org.glintery.benchmarks.packaged.Posting;

/** How large the workshop's folder gets while it is filled and written to for a minute, and how large it is closed. */
final class FileBenchmark implements Benchmark {

    private static final long POSTING_NS = TimeUnit.SECONDS.toNanos(60);
    private static final int A_TURN = 1_000;
    private static final double MB = 1 << 20;
    private static final double MOST_AT_PEAK_MB = 2 * 1024;
    private static final double MOST_CLOSED_MB = 150;

    @Override
    public String name() {
        return "file";
    }

    @Override
    public List<Figure> run(Bench bench) throws IOException {
        Path made = bench.made().of(Size.FULL);
        Path workshop = bench.made().copyOf(Size.FULL, "file");
        long peak = Math.max(bench.made().peakBytes(Size.FULL), peakWhilePosting(bench, workshop));
        return List.of(
                Figure.alone(
                        name(),
                        "the folder at its peak, while filled kit by kit and in a minute of single postings",
                        peak / MB,
                        Unit.MEGABYTES,
                        Limit.atMost(MOST_AT_PEAK_MB)),
                closed("the folder, closed", made),
                closed("the folder, closed after that minute", workshop));
    }

    private Figure closed(String what, Path workshop) {
        return Figure.alone(name(), what, SizeWatch.bytes(workshop) / MB, Unit.MEGABYTES, Limit.atMost(MOST_CLOSED_MB));
    }

    private static long peakWhilePosting(Bench bench, Path workshop) throws IOException {
        var lines = new PostedLines(bench.seed());
        try (var watch = new SizeWatch(workshop)) {
            try (var posting = new Posting(bench.application(), workshop)) {
                long start = System.nanoTime();
                while (System.nanoTime() - start < POSTING_NS) {
                    posting.send(lines.single(A_TURN));
                }
            }
            return watch.peakBytes();
        }
    }
}
