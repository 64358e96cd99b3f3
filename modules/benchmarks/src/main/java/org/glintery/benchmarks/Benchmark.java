package org.glintery.benchmarks;

import java.io.IOException;
import java.util.List;

/** One thing that is measured. */
interface Benchmark {

    /** As it is asked for on the command line. */
    String name();

    /** Measures. Takes from seconds to an hour. */
    List<Figure> run(Bench bench) throws IOException, InterruptedException;
}
