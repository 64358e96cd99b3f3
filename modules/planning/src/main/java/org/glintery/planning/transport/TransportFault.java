package org.glintery.planning.transport;

import org.glintery.api.Preview;

/**
 * What is wrong with a plan.
 *
 * @param place which share, row or column; -1 when it is the whole
 * @param said by the plan
 * @param found by the task
 */
@Preview(since = "1.0")
public record TransportFault(Kind kind, int place, double said, double found) {

    /** What it is about. */
    public enum Kind {
        /** Rows, columns and amounts are not equally many. */
        SHARES,
        /** A share has a row or a column that is not there, or an amount below zero. */
        SHARE,
        /** Not all of a row goes somewhere, or more. */
        ROW,
        /** A column has more than it holds. */
        COLUMN,
        /** There is not one price for each column. */
        PRICES,
        /** A price is below zero or no number. */
        PRICE,
        /** The plan costs something else. */
        COST,
        /** The prices prove less. */
        BOUND
    }
}
