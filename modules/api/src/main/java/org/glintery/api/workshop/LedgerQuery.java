package org.glintery.api.workshop;

import java.util.Optional;
import org.glintery.api.Stable;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;

/**
 * Which entries to read, in recorded order.
 *
 * @param fromSequence the first sequence number wanted, 1 for all
 * @param most how many at the most
 */
@Stable
public record LedgerQuery(long fromSequence, int most, Optional<Drill> drill, Optional<Spot> spot) {
    public static LedgerQuery all() {
        return new LedgerQuery(1, Integer.MAX_VALUE, Optional.empty(), Optional.empty());
    }
}
