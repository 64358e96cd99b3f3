package org.glintery.benchmarks;

import java.io.IOException;
import java.util.List;
import org.glintery.benchmarks.kill.KillRounds;

/** {@code kill -9} of the process that books, again and again: nothing that was printed may be lost. */
final class KillBenchmark implements Benchmark {

    private static final int ROUNDS = 200;
    private static final int LONG_ROUNDS = 10;

    @Override
    public String name() {
        return "kill";
    }

    @Override
    public List<Figure> run(Bench bench) throws IOException, InterruptedException {
        int rounds = bench.choice().number("rounds", ROUNDS);
        int longRounds = bench.choice().number("long-rounds", Math.min(LONG_ROUNDS, rounds));
        KillRounds.Tally tally = new KillRounds(bench.application(), bench.codec(), bench.aside(), bench.seed())
                .run(rounds, longRounds, () -> bench.fresh("kill"));
        String where = String.format(
                "in %d kills, %d of them after a minute, %,d ids printed, seed %d",
                rounds, longRounds, tally.printed(), bench.seed());
        return List.of(
                Figure.alone(
                        name(),
                        "movements lost, doubled or not as sent, " + where,
                        tally.breaches(),
                        Unit.PIECES,
                        Limit.atMost(0)),
                Figure.alone(
                        name(),
                        "problems found by workshop check afterwards",
                        tally.problems(),
                        Unit.PIECES,
                        Limit.atMost(0)));
    }
}
