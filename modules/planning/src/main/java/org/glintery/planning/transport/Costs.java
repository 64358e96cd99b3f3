package org.glintery.planning.transport;

import org.glintery.api.Preview;

/** What one of a row costs in a column: finite, not negative, the same whenever it is asked for. Asked on any thread. */
@Preview(since = "1.0")
@FunctionalInterface
public interface Costs {
    double of(int row, int column);
}
