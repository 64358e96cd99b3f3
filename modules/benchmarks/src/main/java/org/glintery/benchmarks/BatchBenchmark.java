package org.glintery.benchmarks;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.glintery.benchmarks.large.Size;
import org.glintery.benchmarks.packaged.PostedLines;
import org.glintery.benchmarks.packaged.Posting;

/** {@code drills post -} with batches of a thousand. */
final class BatchBenchmark implements Benchmark {

    private static final int TURNS = 9;
    private static final int BATCHES_A_TURN = 10;
    private static final int BATCH = 1_000;
    private static final double LEAST_A_SECOND = 20_000;

    @Override
    public String name() {
        return "batch";
    }

    @Override
    public List<Figure> run(Bench bench) throws IOException {
        Path workshop = bench.made().copyOf(Size.FULL, "batch");
        var lines = new PostedLines(bench.seed());
        List<Double> rates = new ArrayList<>();
        try (var posting = new Posting(bench.application(), workshop)) {
            posting.send(lines.batches(BATCHES_A_TURN, BATCH));
            for (int turn = 0; turn < TURNS; turn++) {
                rates.add(BATCHES_A_TURN * BATCH / posting.send(lines.batches(BATCHES_A_TURN, BATCH)));
            }
        }
        return List.of(Figure.alone(
                name(),
                "movements in batches of 1 000, with 500 000 in place",
                Median.of(rates),
                Unit.A_SECOND,
                Limit.atLeast(LEAST_A_SECOND)));
    }
}
