package org.glintery.planning.transport;

import java.util.Arrays;
import org.glintery.api.Preview;

/**
 * Rows whose amounts go into columns, all of them.
 *
 * @param amounts by row, not negative; read, never written
 * @param limits by column what it holds at most; read, never written
 */
@Preview(since = "1.0")
public record TransportTask(int[] amounts, int[] limits, Costs costs) {

    /** @throws IllegalArgumentException for a negative amount or limit */
    public TransportTask {
        if (Arrays.stream(amounts).anyMatch(amount -> amount < 0)
                || Arrays.stream(limits).anyMatch(limit -> limit < 0)) {
            throw new IllegalArgumentException("an amount or a limit is negative");
        }
    }

    public long amount() {
        return Arrays.stream(amounts).asLongStream().sum();
    }

    /** Whether the columns hold all. */
    public boolean fits() {
        return amount() <= Arrays.stream(limits).asLongStream().sum();
    }
}
