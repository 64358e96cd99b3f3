package org.glintery.planning.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.glintery.planning.flow.Work;
import org.junit.jupiter.api.Test;

class BoxedProgramTest {

    private static final long SEED = 21;

    @Test
    void solvesATextbookProgram() {
        // Dantzig's example as in Hillier and Lieberman, Wyndor Glass: max 3x + 5y, x <= 4, 2y <= 12, 3x + 2y <= 18 ->
        // 36.
        BoxedProgram program =
                new BoxedProgram(new long[] {-3, -5}, new int[] {0, 0}, new int[] {4, 100}, Work.unlimited());
        program.add(new SumRow(new int[] {1}, new int[] {2}, 0, 12));
        program.add(new SumRow(new int[] {0, 1}, new int[] {3, 2}, 0, 18));
        assertThat(program.solve()).isEqualTo(BoxedProgram.End.OPTIMAL);
        assertThat(program.values()[0]).isCloseTo(2, within(1e-6));
        assertThat(program.values()[1]).isCloseTo(6, within(1e-6));
        CertainBound bound = new CertainBound(new long[] {-3, -5});
        assertThat(bound.least(program.rows(), program.prices(), new int[] {0, 0}, new int[] {4, 100}))
                .isEqualTo(-36);
    }

    @Test
    void staysBelowEveryWholeSolution_andProvesThatThereIsNone() {
        Random random = new Random(SEED);
        int solvable = 0;
        int tight = 0;
        for (int i = 0; i < 1_000; i++) {
            SmallPrograms small = new SmallPrograms(random);
            long[] best = {Long.MAX_VALUE};
            small.solutions(values -> best[0] = Math.min(best[0], small.charge(values)));
            long bound = bound(small);
            assertThat(bound).as("seed %d program %d", SEED, i).isLessThanOrEqualTo(best[0]);
            solvable += best[0] < Long.MAX_VALUE ? 1 : 0;
            tight += bound == best[0] ? 1 : 0;
        }
        assertThat(solvable).isGreaterThan(300);
        assertThat(tight).as("bounds that are met").isGreaterThan(solvable / 2);
    }

    private static long bound(SmallPrograms small) {
        BoxedProgram program = new BoxedProgram(small.charges, small.least, small.most, Work.unlimited());
        small.conditions.forEach(program::add);
        program.solve();
        small.needs().forEach(program::add);
        BoxedProgram.End end = program.solve();
        CertainBound certain = new CertainBound(small.charges);
        double[] prices = program.prices();
        if (end == BoxedProgram.End.IMPOSSIBLE) {
            double[] reason = program.reason();
            Arrays.setAll(prices, k -> prices[k] + 1e6 * reason[k]);
        }
        return certain.least(program.rows(), prices, small.least, small.most);
    }

    @Test
    void goesOnWhereItStands_whenBoundsMoveAndRowsGo() {
        Random random = new Random(SEED);
        for (int i = 0; i < 300; i++) {
            SmallPrograms small = new SmallPrograms(random);
            BoxedProgram kept = new BoxedProgram(small.charges, small.least, small.most, Work.unlimited());
            small.conditions.forEach(kept::add);
            small.needs().forEach(kept::add);
            kept.solve();
            for (int change = 0; change < 4; change++) {
                int column = random.nextInt(small.most.length);
                int most = random.nextInt(small.most[column] + 1);
                kept.bound(column, 0, most);
                BoxedProgram.End end = kept.solve();
                kept.bound(column, 0, small.most[column]);

                int[] moved = small.most.clone();
                moved[column] = most;
                BoxedProgram fresh = new BoxedProgram(small.charges, small.least, moved, Work.unlimited());
                kept.rows().forEach(fresh::add);
                assertThat(end).as("seed %d program %d", SEED, i).isEqualTo(fresh.solve());
            }
            if (kept.solve() == BoxedProgram.End.OPTIMAL) {
                double before = cost(small, kept);
                boolean[] gone = kept.dropSlack(small.conditions.size());
                assertThat(gone).hasSize(small.conditions.size() + small.needs().size());
                assertThat(kept.solve()).isEqualTo(BoxedProgram.End.OPTIMAL);
                assertThat(cost(small, kept)).as("seed %d program %d", SEED, i).isCloseTo(before, within(1e-4));
            }
        }
    }

    private static double cost(SmallPrograms small, BoxedProgram program) {
        double sum = 0;
        for (int column = 0; column < small.charges.length; column++) {
            sum += small.charges[column] * program.values()[column];
        }
        return sum;
    }
}
