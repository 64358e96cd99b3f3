package org.glintery.planning.clearing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.glintery.planning.flow.Bounds;
import org.glintery.planning.flow.Work;
import org.glintery.planning.program.BoxedProgram;
import org.glintery.planning.program.CertainBound;
import org.glintery.planning.program.RoundingCuts;
import org.glintery.planning.program.SumRow;

/**
 * The linear program of a network's parcels with cuts: what lanes carry, and how much of each link is used. Its optimum is
 * no more than what any plan costs. That a lane needs its link is told to the program only where it forgets.
 *
 * <p>Not safe for use by several threads.
 */
final class ParcelProgram {

    private static final int MOST_CUTS = 200;
    private static final double BROKEN = 1e-6;
    private static final double FARTHEST = 1e9;

    private final ProgramColumns columns;
    private final BoxedProgram program;
    private final CertainBound certain;
    private final RoundingCuts rounding;
    private final List<SumRow> needs;
    private final int conditions;
    /** What was added behind the conditions: needs or cuts, in order, and all of these at once. */
    private final List<Object> told = new ArrayList<>();

    private final Set<Object> known = new HashSet<>();
    private int manyRows;
    private final int[] least;
    private final int[] most;
    private double[] values;

    /** @param limit when given, the program is as fair as can be within it, rather than cheap */
    ParcelProgram(ParcelNetwork net, Bounds ranges, byte[] state, Optional<Limit> limit, Work work) {
        columns = new ProgramColumns(net, ranges, state, limit.isPresent());
        ProgramRows rows = new ProgramRows(net, ranges, state, columns);
        List<SumRow> sums = rows.conditions();
        List<SumRow> more =
                limit.map(most -> rows.whenFair(most.postage, most.parcels)).orElse(List.of());
        conditions = sums.size() + more.size();
        program = new BoxedProgram(columns.charge, columns.least, columns.most, work);
        sums.forEach(program::add);
        more.forEach(program::add);
        certain = new CertainBound(columns.charge);
        rounding = new RoundingCuts(sums, columns.least, columns.most, columns.needs);
        needs = rows.needs();
        least = columns.least.clone();
        most = columns.most.clone();
        values = new double[columns.size()];
    }

    /** What a plan may cost at most. */
    record Limit(long postage, long parcels) {

        /** Whether the sums of the program can't overflow. */
        boolean isHandled(Charges charges) {
            return postage / charges.commonPostage() < 1 << 16;
        }
    }

    /** Tells what is decided now. */
    void decide(LinkStates states) {
        for (int column = 0; column < columns.size(); column++) {
            if (column < columns.lanes) {
                most[column] = Math.min(columns.most[column], states.bounds().high()[columns.of[column]]);
            } else if (column < columns.steps) {
                byte state = states.all()[columns.of[column]];
                least[column] = state == LinkStates.OPEN ? 1 : 0;
                most[column] = state == LinkStates.CLOSED ? 0 : 1;
            }
            program.bound(column, least[column], most[column]);
        }
    }

    /**
     * Solves, adding what is broken.
     *
     * @param goal from where on more is of no interest
     * @param rounds of cuts at most
     * @return no plan costs less
     */
    long improve(long goal, int rounds) {
        if (program.rows().size() > manyRows) {
            forgetSlack();
        }
        long bound = Long.MIN_VALUE;
        int round = 0;
        while (true) {
            BoxedProgram.End end = program.solve();
            if (end == BoxedProgram.End.IMPOSSIBLE) {
                return Math.max(bound, impossible(goal));
            }
            values = program.values();
            bound = Math.max(bound, proven(program.prices()));
            if (bound >= goal || end == BoxedProgram.End.GIVEN_UP) {
                return bound;
            }
            if (!tellNeeds() && (round++ >= rounds || !addCuts())) {
                return bound;
            }
        }
    }

    private long proven(double[] prices) {
        return columns.paid + certain.least(program.rows(), prices, least, most);
    }

    /** The reason why there is no solution, taken often enough, proves any bound. */
    private long impossible(long goal) {
        double[] prices = program.prices();
        double[] reason = program.reason();
        long bound = proven(prices);
        for (double factor = 1; factor < FARTHEST && bound < goal; factor *= 8) {
            double[] with = prices.clone();
            for (int i = 0; i < with.length; i++) {
                with[i] += factor * reason[i];
            }
            bound = Math.max(bound, proven(with));
        }
        return bound;
    }

    private boolean tellNeeds() {
        boolean any = false;
        for (int i = 0; i < needs.size(); i++) {
            if (!known.contains(i) && needs.get(i).beyond(values) > BROKEN) {
                any |= tell(i, needs.get(i));
            }
        }
        return any;
    }

    private boolean addCuts() {
        List<RoundingCuts.Cut> cuts = rounding.brokenBy(values);
        cuts.sort(Comparator.comparingDouble(RoundingCuts.Cut::depth).reversed());
        int added = 0;
        for (RoundingCuts.Cut cut : cuts) {
            SumRow row = cut.row();
            Object name = List.of(Arrays.hashCode(row.columns()), Arrays.hashCode(row.weights()), row.high());
            added += added < MOST_CUTS && tell(name, row) ? 1 : 0;
        }
        return added > 0;
    }

    private boolean tell(Object name, SumRow row) {
        if (!known.add(name)) {
            return false;
        }
        told.add(name);
        program.add(row);
        return true;
    }

    /** Needs and cuts with slack cost time; they are told again where they are broken. */
    private void forgetSlack() {
        boolean[] gone = program.dropSlack(conditions);
        for (int i = gone.length - 1; i >= conditions; i--) {
            if (gone[i]) {
                known.remove(told.remove(i - conditions));
            }
        }
        manyRows = program.rows().size() * 5 / 4 + 50;
    }

    /** How much of a link is used that was not decided from the start. */
    double usage(int link) {
        return values[columns.link[link]];
    }

    /** No plan in which this free link is decided against its price costs less. */
    long otherwise(int link) {
        return columns.paid + certain.otherwise(columns.link[link]);
    }

    /** Whether a free link is used by its price. */
    boolean wants(int link) {
        return certain.wants(columns.link[link]);
    }

    /** The bound last proven, before it was rounded up. */
    double level() {
        return columns.paid + certain.level();
    }
}
