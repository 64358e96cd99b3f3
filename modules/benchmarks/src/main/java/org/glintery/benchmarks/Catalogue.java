package org.glintery.benchmarks;

import java.util.List;

/** The benchmarks there are, in the order they are run. */
final class Catalogue {

    static final List<Benchmark> ALL = List.of(
            new PostBenchmark(),
            new BatchBenchmark(),
            new FileBenchmark(),
            new VerbBenchmark(),
            new OpeningBenchmark(),
            new TypingBenchmark(),
            new CostBenchmark(),
            new ChartBenchmark(),
            new KillBenchmark());

    private Catalogue() {}
}
