package org.glintery.api.ledger;

import java.time.Instant;
import java.util.UUID;
import org.glintery.api.Stable;

/**
 * A booked action with what it came to.
 *
 * @param sequence its place in the recorded order, from 1
 * @param drill for a reversal, that of what it takes back
 * @param count whole drills moved from {@code from} to {@code to}; for a reversal the spots are exchanged
 * @param change the change set that booked it
 */
@Stable
public record LedgerEntry(
        long sequence,
        LedgerAction action,
        Drill drill,
        Spot from,
        Spot to,
        long count,
        Instant recordedAt,
        UUID change) {}
