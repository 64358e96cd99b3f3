package org.glintery.benchmarks;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.glintery.benchmarks.large.Size;
import org.glintery.benchmarks.packaged.PostedLines;
import org.glintery.benchmarks.packaged.Posting;

/** {@code drills post -}, a movement a line, by turns with single rows committed and synced by the bare database. */
final class PostBenchmark implements Benchmark {

    private static final int TURNS = 7;
    private static final int A_TURN = 3_000;
    private static final double SHARE = 0.5;

    @Override
    public String name() {
        return "post";
    }

    @Override
    public List<Figure> run(Bench bench) throws IOException {
        Path workshop = bench.made().copyOf(Size.FULL, "post");
        var lines = new PostedLines(bench.seed());
        List<Double> ours = new ArrayList<>();
        List<Double> bare = new ArrayList<>();
        try (var raw = new RawCommits(bench.fresh("raw").resolve("raw"));
                var posting = new Posting(bench.application(), workshop)) {
            posting.send(lines.single(A_TURN));
            raw.insert(A_TURN);
            for (int turn = 0; turn < TURNS; turn++) {
                ours.add(A_TURN / posting.send(lines.single(A_TURN)));
                bare.add(A_TURN / raw.insert(A_TURN));
            }
        } catch (SQLException e) {
            throw new BenchmarkFailed("the bare database: " + e.getMessage());
        }
        return List.of(Figure.ratio(
                name(),
                "drills post -, one movement a line, with 500 000 in place",
                Median.of(ours),
                Unit.A_SECOND,
                new Figure.Against("single-row fsynced commits", Median.of(bare)),
                Limit.atLeast(SHARE)));
    }
}
