package org.glintery.benchmarks.kill;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import org.glintery.api.Json;
import org.glintery.api.JsonCodec;
import org.glintery.benchmarks.BenchmarkFailed;
import org.glintery.benchmarks.packaged.Application;
import org.glintery.benchmarks.packaged.PostedLines;
import org.glintery.benchmarks.packaged.PostedMovement;

/**
 * Rounds of posting, killing and looking at what is there. Most are short; some last a minute, since a database may lose
 * its newest commits only once it uses freed parts of its file again. One workshop takes rounds until it is large.
 */
public final class KillRounds {

    private static final int SHORT_MS = 3_000;
    private static final int LONG_MS = 55_000;
    private static final int LONG_SPREAD_MS = 20_000;
    private static final int MOST_IN_A_WORKSHOP = 150_000;
    private static final String FIRST_LINE = "{\"movements\":[";
    private static final String LAST_LINE = "]}";
    private static final String BAG = "bag:";

    private final Application application;
    private final JsonCodec codec;
    private final PrintStream aside;
    private final SplittableRandom random;
    private final PostedLines lines;

    /**
     * What came of all rounds.
     *
     * @param printed ids in all
     * @param breaches ids that were printed and are missing, are there twice or not as they were sent
     * @param problems what {@code workshop check} found
     */
    public record Tally(int printed, int breaches, int problems) {
        Tally and(Tally other) {
            return new Tally(printed + other.printed, breaches + other.breaches, problems + other.problems);
        }
    }

    public KillRounds(Application application, JsonCodec codec, PrintStream aside, long seed) {
        this.application = application;
        this.codec = codec;
        this.aside = aside;
        random = new SplittableRandom(seed);
        lines = new PostedLines(random.nextLong());
    }

    /** A place for workshops. */
    public interface Places {
        Path next() throws IOException;
    }

    /** @param longRounds of these how many last a minute, spread evenly */
    public Tally run(int rounds, int longRounds, Places places) throws IOException, InterruptedException {
        Tally tally = new Tally(0, 0, 0);
        Path workshop = null;
        Promises promises = new Promises();
        for (int round = 1; round <= rounds; round++) {
            if (workshop == null || promises.printedSoFar() > MOST_IN_A_WORKSHOP) {
                workshop = places.next().resolve("workshop");
                promises = new Promises();
                done(application.verb(workshop, "workshop", "new"));
            }
            boolean isLong = (long) round * longRounds / rounds > (long) (round - 1) * longRounds / rounds;
            int delayMs = isLong ? LONG_MS + random.nextInt(LONG_SPREAD_MS) : random.nextInt(SHORT_MS);
            int before = promises.printedSoFar();
            new KilledPosting(application, lines, promises).run(workshop, delayMs);
            int printed = promises.printedSoFar() - before;
            Tally now = look(workshop, promises, printed);
            aside.printf(
                    "round %d of %d, killed %d ms after 50 ids: %d ids printed, %d breaches, %d problems%n",
                    round, rounds, delayMs, printed, now.breaches(), now.problems());
            tally = tally.and(now);
        }
        return tally;
    }

    private Tally look(Path workshop, Promises promises, int printed) throws IOException, InterruptedException {
        Json.Obj check = object(done(application.verb(workshop, "workshop", "check", "--json")));
        int problems = ((Json.Arr) check.get("problems").orElseThrow()).items().size();
        Promises.Comparison comparison = promises.compare();
        Process ledger = application.verb(workshop, "drills", "ledger", "--json");
        try (var out = new BufferedReader(new InputStreamReader(ledger.getInputStream(), StandardCharsets.UTF_8))) {
            // one object with a movement on each line between its first and its last
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                if (line.equals(FIRST_LINE) || line.equals(LAST_LINE)) {
                    continue;
                }
                comparison.entry(posted(object(line.endsWith(",") ? line.substring(0, line.length() - 1) : line)));
            }
        }
        end(ledger);
        if (comparison.entries() != check.number("movements").orElseThrow().intValueExact()) {
            throw new BenchmarkFailed("the ledger prints another number of movements than the check counts");
        }
        return new Tally(printed, comparison.breaches().all(), problems);
    }

    /** An entry of the ledger as what was sent; whatever was not sent like this becomes none that was. */
    private static PostedMovement posted(Json.Obj entry) {
        Json.Obj drill = (Json.Obj) entry.get("drill").orElseThrow();
        String to = entry.text("to").orElseThrow();
        var movement = new PostedMovement(
                UUID.fromString(entry.text("id").orElseThrow()),
                drill.text("code").orElseThrow(),
                to.startsWith(BAG) ? to.substring(BAG.length()) : to,
                entry.number("count").orElseThrow().intValueExact());
        boolean bought = entry.text("kind").equals(Optional.of("movement"))
                && entry.text("from").equals(Optional.of("supplier"))
                && entry.text("reason").equals(Optional.of("bought"))
                && drill.text("card").equals(Optional.of("own"))
                && to.startsWith(BAG);
        return bought ? movement : new PostedMovement(movement.id(), "", "", 0);
    }

    private Json.Obj object(String text) {
        return (Json.Obj) codec.parse(text);
    }

    private static String done(Process process) throws IOException, InterruptedException {
        process.getOutputStream().close();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        end(process);
        return out;
    }

    private static void end(Process process) throws InterruptedException {
        if (process.waitFor() != 0) {
            throw new BenchmarkFailed("a verb ended with " + process.exitValue());
        }
    }
}
