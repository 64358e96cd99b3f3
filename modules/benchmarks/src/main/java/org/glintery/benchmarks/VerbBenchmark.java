package org.glintery.benchmarks;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.glintery.benchmarks.large.Size;
import org.glintery.benchmarks.packaged.Application;

/**
 * A verb on an empty workshop, by turns with a bare headless job: the same launcher, platform and flags, and one module
 * whose option does nothing.
 */
final class VerbBenchmark implements Benchmark {

    private static final int TURNS = 12;
    private static final double MOST = 1.5;

    @Override
    public String name() {
        return "verb";
    }

    @Override
    public List<Figure> run(Bench bench) throws IOException, InterruptedException {
        Path workshop = bench.made().copyOf(Size.EMPTY, "verb");
        Application ours = bench.application();
        Application bare = ours.bare(bench.fresh("bare"), bench.stopwatch(), "stopwatch-nothing");
        List<Double> oursS = new ArrayList<>();
        List<Double> bareS = new ArrayList<>();
        seconds(ours, workshop);
        seconds(bare, workshop);
        for (int turn = 0; turn < TURNS; turn++) {
            oursS.add(seconds(ours, workshop));
            bareS.add(seconds(bare, workshop));
            bench.aside().printf("kit list %.2f s, nothing %.2f s%n", oursS.get(turn), bareS.get(turn));
        }
        return List.of(Figure.ratio(
                name(),
                "kit list on an empty workshop",
                Median.of(oursS),
                Unit.SECONDS,
                new Figure.Against("a bare headless job", Median.of(bareS)),
                Limit.atMost(MOST)));
    }

    private static double seconds(Application application, Path workshop) throws IOException, InterruptedException {
        long start = System.nanoTime();
        Process process = application.verb(workshop, "kit", "list");
        process.getOutputStream().close();
        process.getInputStream().readAllBytes();
        if (process.waitFor() != 0) {
            throw new BenchmarkFailed("the job ended with " + process.exitValue());
        }
        return (System.nanoTime() - start) / 1e9;
    }
}
