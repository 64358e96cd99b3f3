package org.glintery.planning.program;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import org.glintery.planning.flow.Work;

/**
 * A linear program whose columns and rows all lie between finite bounds, by the dual simplex with steepest edges (Forrest
 * and Goldfarb, Mathematical Programming 57, 1992). Between finite bounds any basis is dual feasible, so that after rows
 * are added or bounds moved it goes on where it stands. Costs are disturbed a little against stalling. Nothing here is
 * exact: {@link CertainBound} makes exact what is proven with it.
 *
 * <p>Not safe for use by several threads.
 */
public final class BoxedProgram {

    private static final double PIVOT = 1e-7;
    private static final double FEASIBLE = 1e-7;
    private static final double SLACK = 1e-3;
    private static final double PRICED = 1e-9;
    private static final double DRIFT = 1e-5;
    private static final double DISTURBANCE = 1e-6;

    private final int columns;
    private final Work work;
    private final Dictionary dictionary;
    private final List<SumRow> rows = new ArrayList<>();
    private final boolean[] atHigh;
    private double[] low;
    private double[] high;
    private double[] value = {};

    /** How solving ended. */
    public enum End {
        OPTIMAL,
        /** One line can't be met: {@link #reason} tells why. */
        IMPOSSIBLE,
        /** The work is spent, or rounding was in the way. */
        GIVEN_UP
    }

    private int impossible;

    /** @param charges what a unit of each column costs; to be made least */
    public BoxedProgram(long[] charges, int[] least, int[] most, Work work) {
        this.work = work;
        columns = charges.length;
        Random random = new Random(columns);
        double dearest = Math.max(1, Arrays.stream(charges).max().orElse(1));
        double[] cost = new double[columns];
        Arrays.setAll(cost, c -> charges[c] + dearest * DISTURBANCE * (1 + random.nextDouble()));
        dictionary = new Dictionary(cost, work);
        atHigh = new boolean[columns];
        low = Arrays.stream(least).asDoubleStream().toArray();
        high = Arrays.stream(most).asDoubleStream().toArray();
    }

    /** @param row with finite ends */
    public void add(SumRow row) {
        int variable = columns + rows.size();
        rows.add(row);
        low = Arrays.copyOf(low, variable + 1);
        high = Arrays.copyOf(high, variable + 1);
        value = Arrays.copyOf(value, rows.size());
        low[variable] = row.low();
        high[variable] = row.high();
        dictionary.add(row);
    }

    /**
     * Forgets rows that have slack.
     *
     * @param first the first row that may go
     * @return by row, whether it went
     */
    public boolean[] dropSlack(int first) {
        boolean[] gone = new boolean[rows.size()];
        for (int i = first; i < gone.length; i++) {
            int variable = columns + i;
            double at = value(variable);
            gone[i] = !dictionary.isFree(variable) && low[variable] + SLACK < at && at < high[variable] - SLACK;
        }
        int kept = columns;
        for (int i = 0; i < gone.length; i++) {
            if (!gone[i]) {
                low[kept] = low[columns + i];
                high[kept++] = high[columns + i];
            }
        }
        dictionary.drop(gone);
        rows.removeIf(new Predicate<>() {
            private int next;

            @Override
            public boolean test(SumRow row) {
                return gone[next++];
            }
        });
        low = Arrays.copyOf(low, kept);
        high = Arrays.copyOf(high, kept);
        value = new double[rows.size()];
        place();
        return gone;
    }

    /** Those added so far; not a copy. */
    public List<SumRow> rows() {
        return rows;
    }

    public void bound(int column, int least, int most) {
        low[column] = least;
        high[column] = most;
    }

    public End solve() {
        place();
        boolean fresh = true;
        for (int pivots = 0; !work.isSpent() && pivots < 50 * (columns + rows.size()); pivots++) {
            int row = leaving();
            int place = row < 0 ? -1 : entering(row, isBelow(row));
            if (place >= 0) {
                fresh = false;
                step(row, place, isBelow(row));
            } else if (fresh) {
                impossible = row;
                return row < 0 ? End.OPTIMAL : End.IMPOSSIBLE;
            } else {
                refresh();
                fresh = true;
            }
        }
        return End.GIVEN_UP;
    }

    /** The columns' values. */
    public double[] values() {
        double[] values = new double[columns];
        Arrays.setAll(values, this::value);
        return values;
    }

    /** By row, its price; 0 for rows with slack. */
    public double[] prices() {
        double[] prices = new double[rows.size()];
        for (int i = 0; i < prices.length; i++) {
            int variable = columns + i;
            prices[i] = dictionary.isFree(variable) ? dictionary.price[dictionary.place(variable)] : 0;
        }
        return prices;
    }

    /** By row, how it takes part in the reason why there is no solution. */
    public double[] reason() {
        double sign = isBelow(impossible) ? 1 : -1;
        double[] reason = new double[rows.size()];
        for (int i = 0; i < reason.length; i++) {
            int variable = columns + i;
            if (dictionary.isFree(variable)) {
                reason[i] = -sign * dictionary.line[impossible][dictionary.place(variable)];
            } else if (dictionary.lineOf(variable) == impossible) {
                reason[i] = sign;
            }
        }
        return reason;
    }

    private double value(int variable) {
        return dictionary.isFree(variable) ? freeValue(dictionary.place(variable)) : value[dictionary.lineOf(variable)];
    }

    private double freeValue(int place) {
        int variable = dictionary.free[place];
        return atHigh[place] ? high[variable] : low[variable];
    }

    private boolean isBelow(int row) {
        return value[row] < low[dictionary.basic[row]];
    }

    /** Clears away what rounding has left. */
    private void refresh() {
        if (hasDrifted()) {
            dictionary.rebuild(rows);
        }
        place();
    }

    private boolean hasDrifted() {
        double[] values = values();
        for (int i = 0; i < rows.size(); i++) {
            if (Math.abs(value(columns + i) - rows.get(i).at(values)) > DRIFT) {
                return true;
            }
        }
        return false;
    }

    /** Puts free variables where their prices want them, and computes the basic ones. */
    private void place() {
        Arrays.fill(value, 0);
        for (int c = 0; c < columns; c++) {
            if (Math.abs(dictionary.price[c]) > PRICED) {
                atHigh[c] = dictionary.price[c] < 0;
            }
            double at = freeValue(c);
            if (at != 0) {
                for (int i = 0; i < value.length; i++) {
                    value[i] += dictionary.line[i][c] * at;
                }
            }
        }
        work.spend((long) columns * value.length / Dictionary.NUMBERS_A_LOOK);
    }

    /** The line that is furthest off its bounds, measured along its edge; -1 when none is. */
    private int leaving() {
        int row = -1;
        double most = 0;
        for (int i = 0; i < value.length; i++) {
            int variable = dictionary.basic[i];
            double off = Math.max(low[variable] - value[i], value[i] - high[variable]);
            if (off > FEASIBLE && off * off > most * dictionary.steepness[i]) {
                most = off * off / dictionary.steepness[i];
                row = i;
            }
        }
        return row;
    }

    /** The free variable that brings a line back to its bound at the least price; -1 when none does. */
    private int entering(int row, boolean rise) {
        double[] line = dictionary.line[row];
        double least = Double.MAX_VALUE;
        double heaviest = 0;
        int place = -1;
        for (int c = 0; c < columns; c++) {
            double weight = rise ? line[c] : -line[c];
            int variable = dictionary.free[c];
            if (Math.abs(weight) > PIVOT && low[variable] < high[variable] && atHigh[c] == weight < 0) {
                double ratio = Math.max(0, dictionary.price[c] / weight);
                boolean tied = ratio < least + PRICED && Math.abs(weight) > heaviest;
                if (ratio < least - PRICED || tied) {
                    least = Math.min(ratio, least);
                    heaviest = Math.abs(weight);
                    place = c;
                }
            }
        }
        return place;
    }

    private void step(int row, int place, boolean rise) {
        int variable = dictionary.basic[row];
        double bound = rise ? low[variable] : high[variable];
        double step = (bound - value[row]) / dictionary.line[row][place];
        double entered = freeValue(place) + step;
        for (int i = 0; i < value.length; i++) {
            value[i] += dictionary.line[i][place] * step;
        }
        dictionary.pivot(row, place);
        value[row] = entered;
        atHigh[place] = !rise;
    }
}
