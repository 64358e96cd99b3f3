package org.glintery.planning.program;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.glintery.planning.flow.Work;

/**
 * The rows of a linear program solved for the basic variables: each as a weighted sum of the free ones. Variables are the
 * columns, and behind them the sums of the rows as they were added.
 */
final class Dictionary {

    private static final double TINY = 1e-11;
    private static final double PIVOT = 1e-7;
    /** Numbers in a row are seen faster than arcs scattered in a network. */
    static final int NUMBERS_A_LOOK = 4;

    private final int columns;
    private final double[] cost;
    private final Work work;

    /** The free variables by place, and what a unit of each costs. */
    final int[] free;

    final double[] price;

    /** The basic variables by line, and the lines. */
    int[] basic = {};

    double[][] line = {};

    /** By line, one more than the sum of its squares: how steep the edge is along which its variable changes. */
    double[] steepness = {};

    /** By variable its place among the free ones, or the complement of its line. */
    private int[] where;

    private final int[] filled;

    Dictionary(double[] cost, Work work) {
        this.cost = cost;
        this.work = work;
        columns = cost.length;
        price = cost.clone();
        free = new int[columns];
        where = new int[columns];
        filled = new int[columns];
        Arrays.setAll(free, c -> c);
        Arrays.setAll(where, c -> c);
    }

    boolean isFree(int variable) {
        return where[variable] >= 0;
    }

    /** Where a free variable is. */
    int place(int variable) {
        return where[variable];
    }

    /** Where a basic variable is. */
    int lineOf(int variable) {
        return ~where[variable];
    }

    void add(SumRow row) {
        int at = basic.length;
        int variable = columns + at;
        where = Arrays.copyOf(where, variable + 1);
        basic = Arrays.copyOf(basic, at + 1);
        line = Arrays.copyOf(line, at + 1);
        steepness = Arrays.copyOf(steepness, at + 1);
        where[variable] = ~at;
        basic[at] = variable;
        line[at] = solved(row);
        steepness[at] = steepness(line[at]);
    }

    private double[] solved(SumRow row) {
        double[] sum = new double[columns];
        for (int k = 0; k < row.columns().length; k++) {
            int at = where[row.columns()[k]];
            double weight = row.weights()[k];
            if (at >= 0) {
                sum[at] += weight;
            } else {
                double[] other = line[~at];
                for (int c = 0; c < columns; c++) {
                    sum[c] += weight * other[c];
                }
            }
        }
        return sum;
    }

    /** Forgets rows whose sums are basic. @param gone by row */
    void drop(boolean[] gone) {
        int[] renumbered = new int[where.length];
        int next = 0;
        for (int variable = 0; variable < where.length; variable++) {
            renumbered[variable] = next;
            next += variable >= columns && gone[variable - columns] ? 0 : 1;
        }
        int[] lines = IntStream.range(0, basic.length)
                .filter(i -> basic[i] < columns || !gone[basic[i] - columns])
                .toArray();
        line = IntStream.of(lines).mapToObj(i -> line[i]).toArray(double[][]::new);
        steepness = IntStream.of(lines).mapToDouble(i -> steepness[i]).toArray();
        basic = IntStream.of(lines).map(i -> renumbered[basic[i]]).toArray();
        where = new int[next];
        for (int c = 0; c < columns; c++) {
            free[c] = renumbered[free[c]];
            where[free[c]] = c;
        }
        for (int i = 0; i < basic.length; i++) {
            where[basic[i]] = ~i;
        }
    }

    /** Swaps the basic variable of a line with a free one. */
    void pivot(int row, int place) {
        double[] solved = line[row];
        double inverse = 1 / solved[place];
        int count = 0;
        for (int c = 0; c < columns; c++) {
            if (c != place && solved[c] != 0) {
                solved[c] *= -inverse;
                filled[count++] = c;
            }
        }
        solved[place] = inverse;
        long looks = columns;
        for (int i = 0; i < basic.length; i++) {
            if (i != row && line[i][place] != 0) {
                steepness[i] = Math.max(1, steepness[i] + insert(line[i], solved, place, count));
                looks += count;
            }
        }
        steepness[row] = steepness(solved);
        insert(price, solved, place, count);
        work.spend(looks / NUMBERS_A_LOOK);
        int leaving = basic[row];
        basic[row] = free[place];
        free[place] = leaving;
        where[basic[row]] = ~row;
        where[leaving] = place;
    }

    /** Puts what a variable has become in its place. @return by how much the sum of squares grew */
    private double insert(double[] target, double[] solved, int place, int count) {
        double weight = target[place];
        double growth = 0;
        for (int k = 0; k < count; k++) {
            int c = filled[k];
            double before = target[c];
            double sum = before + weight * solved[c];
            double after = Math.abs(sum) < TINY ? 0 : sum;
            target[c] = after;
            growth += after * after - before * before;
        }
        target[place] = weight * solved[place];
        return growth + target[place] * target[place] - weight * weight;
    }

    private static double steepness(double[] line) {
        double sum = 1;
        for (double weight : line) {
            sum += weight * weight;
        }
        return sum;
    }

    /** Solves the rows for the same basic variables anew, from the rows as they were given. */
    void rebuild(List<SumRow> rows) {
        boolean[] wasBasic = new boolean[where.length];
        for (int variable : basic) {
            wasBasic[variable] = true;
        }
        for (int c = 0; c < columns; c++) {
            free[c] = c;
            where[c] = c;
            price[c] = cost[c];
        }
        for (int i = 0; i < basic.length; i++) {
            basic[i] = columns + i;
            where[columns + i] = ~i;
            line[i] = solved(rows.get(i));
            steepness[i] = steepness(line[i]);
        }
        for (int c = 0; c < columns; c++) {
            if (wasBasic[c]) {
                int row = heaviest(c, wasBasic);
                if (row >= 0) {
                    pivot(row, c);
                }
            }
        }
    }

    private int heaviest(int column, boolean[] staysBasic) {
        int best = -1;
        for (int i = 0; i < basic.length; i++) {
            double weight = Math.abs(line[i][column]);
            if (!staysBasic[basic[i]] && weight > PIVOT && (best < 0 || weight > Math.abs(line[best][column]))) {
                best = i;
            }
        }
        return best;
    }
}
