package org.glintery.charts;

import java.util.Optional;
import org.glintery.api.charts.Chart;

/**
 * What a chart takes to lay.
 *
 * @param bags whole bags, counted for each line
 * @param hours at the pace that was given
 */
public record ChartSupply(long drills, long bags, double grams, Optional<Double> hours) {

    /** Common practice, no published source: what a drill of 2.5 mm weighs. */
    private static final double GRAMS_A_DRILL = 0.01;

    /** @param drillsPerBag at least 1 @param drillsAnHour above 0 */
    public static ChartSupply of(Chart chart, int drillsPerBag, Optional<Double> drillsAnHour) {
        long drills = chart.drills();
        long bags = chart.lines().stream()
                .mapToLong(line -> (line.drills() + drillsPerBag - 1) / drillsPerBag)
                .sum();
        return new ChartSupply(drills, bags, drills * GRAMS_A_DRILL, drillsAnHour.map(pace -> drills / pace));
    }
}
