package org.glintery.planning;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.glintery.api.Preview;

/**
 * How many days until the rest is laid, from what was laid on each day so far, as an interval that covers.
 *
 * <p>Drawing future days from the history alone under-covers, because the history is itself a sample: a nominal 80 %
 * interval covers about {@code 2 Phi(1.2816 / sqrt(1 + h / n)) - 1} for n days of history and a horizon of h days, 60 %
 * at h/n = 1.39. So each draw first resamples the history with replacement, then draws the future from that resample
 * (two-stage bootstrap: Efron and Tibshirani, An Introduction to the Bootstrap, 1993).
 *
 * <p>Days are not independent: some work at weekends only, some in busy and idle weeks. So whole runs of days are drawn
 * rather than single ones, from a history that is closed to a ring (Politis and Romano, A circular block-resampling
 * procedure for stationary data, 1992): up to three weeks each, and whole weeks as soon as the history is long enough.
 * The means of runs of l out of n days spread by a share of l/n too little, at either stage, so the interval is widened
 * by {@code n / (n - l)}. A holiday that is known of beforehand is not foreseen.
 */
@Preview(since = "1.0")
public final class CompletionForecast {

    /** A hundred years. A quantile of this many days means: longer than anyone will wait. */
    public static final int FURTHEST_DAYS = 36_525;

    /** With fewer days of work than this an answer is only rough. */
    public static final int LEAST_ACTIVE_DAYS = 3;

    private static final int DRAWS = 2_000;
    private static final int WEEK = 7;
    private static final int MOST_WEEKS = 3;

    private final long seed;
    private final int draws;

    /** The same seed gives the same answer to the same question. */
    public CompletionForecast(long seed) {
        this(seed, DRAWS);
    }

    /** @param draws how many futures are drawn, at least 100 */
    public CompletionForecast(long seed, int draws) {
        if (draws < 100) {
            throw new IllegalArgumentException("too few draws for quantiles: " + draws);
        }
        this.seed = seed;
        this.draws = draws;
    }

    /**
     * @param laidByDay what was laid on each calendar day, oldest first, days without work as 0; drills, percent or any
     *     other unit
     * @param remaining what is still to lay, in the same unit
     * @throws IllegalArgumentException for a negative or endless number
     */
    public Outlook outlook(double[] laidByDay, double remaining) {
        double[] history = laidByDay.clone();
        for (double laid : history) {
            requireAmount(laid);
        }
        requireAmount(remaining);
        if (remaining == 0) {
            return new Outlook.InDays(0, 0, 0, false);
        }
        long active = Arrays.stream(history).filter(laid -> laid > 0).count();
        if (active == 0) {
            return new Outlook.NeverAtThisPace();
        }
        int run = runOf(history.length);
        int[] days = sortedDraws(history, remaining, run);
        int middle = quantile(days, 50);
        double widening = run == 1 ? 1 : history.length / (double) (history.length - run);
        return new Outlook.InDays(
                widened(quantile(days, 10), middle, widening),
                middle,
                widened(quantile(days, 90), middle, widening),
                active < LEAST_ACTIVE_DAYS);
    }

    /** How many days are drawn together: at most a third of the history, in whole weeks where that is a week. */
    private static int runOf(int historyDays) {
        int third = Math.max(1, historyDays / 3);
        return third < WEEK ? third : Math.min(MOST_WEEKS, third / WEEK) * WEEK;
    }

    /** By ratios, so that no date comes before today. */
    private static int widened(int days, int middle, double widening) {
        return (int) Math.min(FURTHEST_DAYS, Math.round(middle * Math.pow(days / (double) middle, widening)));
    }

    private static void requireAmount(double amount) {
        if (!(amount >= 0 && amount < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("not an amount: " + amount);
        }
    }

    private int[] sortedDraws(double[] history, double remaining, int run) {
        SplittableRandom random = new SplittableRandom(seed);
        int[] starts = new int[(history.length + run - 1) / run];
        int[] days = new int[draws];
        for (int draw = 0; draw < draws; draw++) {
            double sum = 0;
            for (int i = 0; i < starts.length; i++) {
                starts[i] = random.nextInt(history.length);
                sum += laidInRun(history, starts[i], run);
            }
            days[draw] = sum == 0 ? FURTHEST_DAYS : daysToLay(remaining, history, starts, run, random);
        }
        Arrays.sort(days);
        return days;
    }

    private static double laidInRun(double[] history, int start, int run) {
        double sum = 0;
        for (int day = start; day < start + run; day++) {
            sum += history[day % history.length];
        }
        return sum;
    }

    /** Draws runs out of the resample, which is told by where its runs start. */
    private static int daysToLay(double remaining, double[] history, int[] starts, int run, SplittableRandom random) {
        double laid = 0;
        int days = 0;
        int day = 0;
        while (laid < remaining && days < FURTHEST_DAYS) {
            if (days % run == 0) {
                day = starts[random.nextInt(starts.length)];
            }
            laid += history[day % history.length];
            day++;
            days++;
        }
        return days;
    }

    /** The least of the drawn numbers that at least so many percent do not exceed. */
    private static int quantile(int[] sorted, int percent) {
        return sorted[(int) ((long) sorted.length * percent + 99) / 100 - 1];
    }
}
