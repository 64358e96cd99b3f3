package org.glintery.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshop.CheckReport;
import org.glintery.api.workshop.Workshops;
import org.glintery.benchmarks.large.Size;
import org.glintery.benchmarks.packaged.PostedLines;
import org.glintery.benchmarks.packaged.Posting;

/** What an item costs in the full workshop against one of a tenth of the size, by turns: opening, check, export, backup. */
final class CostBenchmark implements Benchmark {
    private static final int TURNS = 3;
    private static final int POSTED = 2_000;
    private static final double MOST_TIMES = 1.5;
    private static final double MICROSECONDS = 1e6;

    @Override
    public String name() {
        return "cost";
    }

    @Override
    public List<Figure> run(Bench bench) throws IOException {
        Path full = bench.made().copyOf(Size.FULL, "cost-full");
        Path tenth = bench.made().copyOf(Size.TENTH, "cost-tenth");
        once(bench.workshops(), tenth, bench.fresh("warm"));
        Map<String, List<Double>> large = new LinkedHashMap<>();
        Map<String, List<Double>> small = new LinkedHashMap<>();
        for (int turn = 0; turn < TURNS; turn++) {
            once(bench.workshops(), full, bench.fresh("full")).forEach((what, us) -> add(large, what, us));
            once(bench.workshops(), tenth, bench.fresh("tenth")).forEach((what, us) -> add(small, what, us));
        }
        post(bench, full, tenth, large, small);
        List<Figure> figures = new ArrayList<>();
        large.forEach((what, us) -> figures.add(Figure.ratio(
                name(),
                what,
                Median.of(us),
                Unit.MICROSECONDS,
                new Figure.Against("at a tenth of the size", Median.of(small.get(what))),
                Limit.atMost(MOST_TIMES))));
        return figures;
    }

    private static void add(Map<String, List<Double>> all, String what, double us) {
        all.computeIfAbsent(what, w -> new ArrayList<>()).add(us);
    }

    /** Microseconds a document or movement. */
    private static Map<String, Double> once(Workshops workshops, Path folder, Path scratch) throws IOException {
        Map<String, Double> took = new LinkedHashMap<>();
        long start = System.nanoTime();
        try (Workshop workshop = workshops.open(folder).orThrow()) {
            double openedUs = since(start);
            workshop.view().spots(); // has the ledger read, which opening leaves for later
            double readUs = since(start);
            start = System.nanoTime();
            CheckReport check = workshop.check();
            double checkedUs = since(start);
            double items = check.documents() + check.movements();
            took.put("opening, a document", openedUs / check.documents());
            took.put("opening and reading the ledger, a document or movement", readUs / items);
            took.put("check, a document or movement", checkedUs / items);
            start = System.nanoTime();
            workshop.exportJson(scratch.resolve("all.json")).orThrow();
            took.put("export, a document or movement", since(start) / items);
            start = System.nanoTime();
            workshop.backup(scratch.resolve("all.zip")).orThrow();
            took.put("backup, a document or movement", since(start) / items);
        }
        Files.delete(scratch.resolve("all.json"));
        Files.delete(scratch.resolve("all.zip"));
        return took;
    }

    private static double since(long start) {
        return (System.nanoTime() - start) / 1e9 * MICROSECONDS;
    }

    private static void post(
            Bench bench, Path full, Path tenth, Map<String, List<Double>> large, Map<String, List<Double>> small)
            throws IOException {
        var lines = new PostedLines(bench.seed());
        try (var first = new Posting(bench.application(), full);
                var second = new Posting(bench.application(), tenth)) {
            first.send(lines.single(POSTED));
            second.send(lines.single(POSTED));
            for (int turn = 0; turn < TURNS; turn++) {
                add(large, "a movement posted", first.send(lines.single(POSTED)) / POSTED * MICROSECONDS);
                add(small, "a movement posted", second.send(lines.single(POSTED)) / POSTED * MICROSECONDS);
            }
        }
    }
}
