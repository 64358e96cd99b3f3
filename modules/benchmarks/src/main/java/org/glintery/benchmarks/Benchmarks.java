package org.glintery.benchmarks;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.glintery.api.JsonCodec;
import org.glintery.api.workshop.Workshops;
import org.glintery.benchmarks.large.MadeWorkshops;
import org.glintery.benchmarks.packaged.Application;
import org.openide.util.Lookup;

/** The command. Exit code 0 when every figure is met, 1 when one is missed, 2 for wrong usage. */
public final class Benchmarks {

    private Benchmarks() {}

    /** @param words the folder {@code application/target}, then what {@link Choice#USAGE} says */
    public static void main(String[] words) throws IOException, InterruptedException {
        System.exit(run(Path.of(words[0]), List.of(words).subList(1, words.length)));
    }

    private static int run(Path target, List<String> words) throws IOException, InterruptedException {
        List<String> known = Catalogue.ALL.stream().map(Benchmark::name).toList();
        Choice choice;
        try {
            choice = Choice.of(words);
        } catch (IllegalArgumentException e) {
            System.err.println(Choice.USAGE);
            return 2;
        }
        if (!known.containsAll(choice.names())) {
            System.err.println("There are: " + String.join(", ", known) + ".");
            return 2;
        }
        Lookup lookup = Lookup.getDefault();
        JsonCodec codec = lookup.lookup(JsonCodec.class);
        Workshops workshops = lookup.lookup(Workshops.class);
        Path folder = target.resolve("benchmarks");
        var made = new MadeWorkshops(folder, workshops, System.err);
        var application = new Application(target.resolve("glintery"), folder.resolve("home"));
        var bench = new Bench(application, workshops, made, codec, choice, System.err, folder.resolve("scratch"));
        var report = new Report(System.out);
        for (Benchmark benchmark : Catalogue.ALL) {
            if (choice.wants(benchmark.name())) {
                run(benchmark, bench, report);
            }
        }
        report.finish(folder, codec);
        return report.allMet() ? 0 : 1;
    }

    private static void run(Benchmark benchmark, Bench bench, Report report) throws InterruptedException {
        try {
            benchmark.run(bench).forEach(report::add);
        } catch (IOException | BenchmarkFailed e) {
            report.failed(benchmark.name(), e.toString());
        }
    }
}
