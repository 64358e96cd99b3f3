package org.glintery.planning;

import org.glintery.api.Preview;

/** When the rest will be done, if work goes on as it did. */
@Preview(since = "1.0")
public sealed interface Outlook {

    /**
     * Days of the calendar from now: in one future of ten it is done by the first, in half of them by the second, in nine
     * of ten by the third. {@link CompletionForecast#FURTHEST_DAYS} means longer than can be told.
     *
     * @param rough too few days of work to trust the width
     */
    record InDays(int early, int middle, int late, boolean rough) implements Outlook {}

    /** Nothing was laid in the days looked at. */
    record NeverAtThisPace() implements Outlook {}
}
