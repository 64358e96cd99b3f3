package org.glintery.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.glintery.api.JsonCodec;
import org.glintery.api.verb.TextTable;

/** Tells the figures: each when it is there, all of them as a table and in files at the end. */
final class Report {

    private final PrintStream out;
    private final List<Figure> figures = new ArrayList<>();
    private final List<String> failures = new ArrayList<>();

    Report(PrintStream out) {
        this.out = out;
    }

    void add(Figure figure) {
        figures.add(figure);
        out.println(words(figure));
    }

    /** A benchmark that could not be carried through: none of its figures counts as met. */
    void failed(String benchmark, String why) {
        String failure = benchmark + " did not come to its end: " + why;
        failures.add(failure);
        out.println(failure);
    }

    boolean allMet() {
        return failures.isEmpty() && !figures.isEmpty() && figures.stream().allMatch(Figure::isMet);
    }

    /** Prints the table and writes {@code results.txt} and {@code results.json}. */
    void finish(Path folder, JsonCodec codec) throws IOException {
        StringBuilder text = new StringBuilder();
        text.append(table()).append('\n');
        failures.forEach(failure -> text.append(failure).append('\n'));
        out.println();
        out.print(text);
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("results.txt"), text);
        Files.writeString(folder.resolve("results.json"), codec.pretty(codec.toJson(figures)) + "\n");
    }

    private TextTable table() {
        var table = new TextTable("benchmark", "what", "measured", "compared with", "comes to", "limit", "", "load");
        for (Figure figure : figures) {
            table.row(
                    figure.benchmark(),
                    figure.what(),
                    figure.unit().words(figure.measured()),
                    against(figure),
                    figure.judgedIn().words(figure.judged()),
                    figure.limit().words(figure.judgedIn()),
                    verdict(figure),
                    load(figure));
        }
        return table;
    }

    private static String words(Figure figure) {
        return figure.benchmark() + ": " + figure.what() + ": "
                + figure.unit().words(figure.measured())
                + figure.against().map(a -> ", " + against(figure)).orElse("") + "; comes to "
                + figure.judgedIn().words(figure.judged()) + ", "
                + figure.limit().words(figure.judgedIn()) + ": " + verdict(figure) + " (load " + load(figure) + ")";
    }

    private static String against(Figure figure) {
        return figure.against()
                .map(against -> against.what() + " " + figure.unit().words(against.value()))
                .orElse("");
    }

    private static String verdict(Figure figure) {
        return figure.isMet() ? "met" : "MISSED";
    }

    private static String load(Figure figure) {
        return String.format(Locale.ROOT, "%.1f", figure.load());
    }
}
