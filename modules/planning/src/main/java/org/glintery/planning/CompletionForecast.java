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
 * (two-stage bootstrap: Efron and Tibshirani, An Introduction to the Bootstrap, 1993). Days are taken as independent: a
 * holiday that is known of beforehand is not foreseen.
 */
@Preview(since = "1.0")
public final class CompletionForecast {

    /** A hundred years. A quantile of this many days means: longer than anyone will wait. */
    public static final int FURTHEST_DAYS = 36_525;

    /** With fewer days of work than this an answer is only rough. */
    public static final int LEAST_ACTIVE_DAYS = 3;

    private static final int DRAWS = 2_000;

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
        int[] days = sortedDraws(history, remaining);
        return new Outlook.InDays(
                quantile(days, 10), quantile(days, 50), quantile(days, 90), active < LEAST_ACTIVE_DAYS);
    }

    private static void requireAmount(double amount) {
        if (!(amount >= 0 && amount < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("not an amount: " + amount);
        }
    }

    private int[] sortedDraws(double[] history, double remaining) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] resample = new double[history.length];
        int[] days = new int[draws];
        for (int draw = 0; draw < draws; draw++) {
            double sum = 0;
            for (int i = 0; i < resample.length; i++) {
                resample[i] = history[random.nextInt(history.length)];
                sum += resample[i];
            }
            days[draw] = sum == 0 ? FURTHEST_DAYS : daysToLay(remaining, resample, random);
        }
        Arrays.sort(days);
        return days;
    }

    private static int daysToLay(double remaining, double[] resample, SplittableRandom random) {
        double laid = 0;
        int days = 0;
        while (laid < remaining && days < FURTHEST_DAYS) {
            laid += resample[random.nextInt(resample.length)];
            days++;
        }
        return days;
    }

    /** The least of the drawn numbers that at least so many percent do not exceed. */
    private static int quantile(int[] sorted, int percent) {
        return sorted[(int) ((long) sorted.length * percent + 99) / 100 - 1];
    }
}
