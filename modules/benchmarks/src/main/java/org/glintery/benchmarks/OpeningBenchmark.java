package org.glintery.benchmarks;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.glintery.benchmarks.large.Size;
import org.glintery.benchmarks.packaged.TimedWindow;

/** From starting the application until Shelves shows rows and one search answers, by turns with an empty workshop. */
final class OpeningBenchmark implements Benchmark {

    private static final int TURNS = 5;
    private static final double MOST_MORE_S = 3;

    @Override
    public String name() {
        return "opening";
    }

    @Override
    public List<Figure> run(Bench bench) throws IOException, InterruptedException {
        Path full = bench.made().copyOf(Size.FULL, "opening");
        Path empty = bench.made().copyOf(Size.EMPTY, "opening-empty");
        List<Double> fullS = new ArrayList<>();
        List<Double> emptyS = new ArrayList<>();
        seconds(bench, empty);
        for (int turn = 0; turn < TURNS; turn++) {
            fullS.add(seconds(bench, full));
            emptyS.add(seconds(bench, empty));
        }
        return List.of(Figure.more(
                name(),
                "from start until Shelves shows rows and a search answers",
                Median.of(fullS),
                Unit.SECONDS,
                new Figure.Against("an empty workshop", Median.of(emptyS)),
                Limit.atMost(MOST_MORE_S)));
    }

    private static double seconds(Bench bench, Path workshop) throws IOException, InterruptedException {
        double seconds = TimedWindow.open(bench.application(), bench.stopwatch(), workshop, Optional.empty())
                        .openedMs()
                / 1e3;
        bench.aside().printf("opening %s: %.2f s%n", workshop.getFileName(), seconds);
        return seconds;
    }
}
