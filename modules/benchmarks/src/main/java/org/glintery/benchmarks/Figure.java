package org.glintery.benchmarks;

import java.lang.management.ManagementFactory;
import java.util.Optional;

/**
 * One measured figure and what it has to keep to.
 *
 * @param benchmark that measured it
 * @param what in words
 * @param measured in {@code unit}
 * @param against what it is compared with in the same run, when it is compared
 * @param judged what the limit is about: the figure itself, a ratio or a difference
 * @param load the machine's load average when it was measured; below 0 when the machine does not tell
 */
record Figure(
        String benchmark,
        String what,
        double measured,
        Unit unit,
        Optional<Against> against,
        double judged,
        Unit judgedIn,
        Limit limit,
        double load) {

    /** @param value in the figure's unit */
    record Against(String what, double value) {}

    /** A figure by itself. */
    static Figure alone(String benchmark, String what, double measured, Unit unit, Limit limit) {
        return new Figure(benchmark, what, measured, unit, Optional.empty(), measured, unit, limit, loadNow());
    }

    /** A figure as a multiple of another. */
    static Figure ratio(String benchmark, String what, double measured, Unit unit, Against against, Limit limit) {
        double ratio = measured / against.value();
        return new Figure(benchmark, what, measured, unit, Optional.of(against), ratio, Unit.TIMES, limit, loadNow());
    }

    /** How much more a figure is than another. */
    static Figure more(String benchmark, String what, double measured, Unit unit, Against against, Limit limit) {
        double more = measured - against.value();
        return new Figure(benchmark, what, measured, unit, Optional.of(against), more, unit, limit, loadNow());
    }

    boolean isMet() {
        return limit.isMet(judged);
    }

    private static double loadNow() {
        return ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
    }
}
