package org.glintery.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.glintery.api.JsonCodec;
import org.glintery.api.workshop.Workshops;
import org.glintery.benchmarks.large.MadeWorkshops;
import org.glintery.benchmarks.packaged.Application;

/**
 * What benchmarks work with.
 *
 * @param aside where progress is told
 * @param folder for all that is made here
 */
record Bench(
        Application application,
        Workshops workshops,
        MadeWorkshops made,
        JsonCodec codec,
        Choice choice,
        PrintStream aside,
        Path folder) {

    long seed() {
        return choice.seed();
    }

    /** The cluster with what runs inside the application. */
    Path stopwatch() {
        return Path.of("modules/stopwatch/target/nbm/clusters/stopwatch");
    }

    /** A new empty folder. */
    Path fresh(String name) throws IOException {
        Files.createDirectories(folder);
        return Files.createTempDirectory(folder, name);
    }
}
