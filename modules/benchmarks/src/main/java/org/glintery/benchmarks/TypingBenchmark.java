package org.glintery.benchmarks;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.glintery.benchmarks.large.Size;
import org.glintery.benchmarks.packaged.TimedWindow;

/** The queries of {@code queries.txt} typed key by key into Shelves: from a key's press until the rows are new. */
final class TypingBenchmark implements Benchmark {

    private static final double SHARE = 0.95;
    private static final double MOST_MS = 50;

    @Override
    public String name() {
        return "typing";
    }

    @Override
    public List<Figure> run(Bench bench) throws IOException, InterruptedException {
        Path workshop = bench.made().copyOf(Size.FULL, "typing");
        Path queries = bench.fresh("typing").resolve("queries.txt");
        try (InputStream in = TypingBenchmark.class.getResourceAsStream("queries.txt")) {
            Files.copy(in, queries);
        }
        TimedWindow window = TimedWindow.open(bench.application(), bench.stopwatch(), workshop, Optional.of(queries));
        List<Double> keysMs =
                window.keysUs().stream().map(micros -> micros / 1e3).toList();
        if (keysMs.isEmpty()) {
            throw new BenchmarkFailed("no key was typed");
        }
        return List.of(Figure.alone(
                name(),
                String.format(
                        "95 of 100 keys, of %d (half within %.1f ms, all within %.1f ms)",
                        keysMs.size(), Median.of(keysMs), Median.quantile(keysMs, 1)),
                Median.quantile(keysMs, SHARE),
                Unit.MILLISECONDS,
                Limit.atMost(MOST_MS)));
    }
}
